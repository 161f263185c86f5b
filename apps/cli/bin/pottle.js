#!/usr/bin/env node
// Stands where npm links the command before anything is built.
import '../dist/main.js'
