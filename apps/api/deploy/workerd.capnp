# The app on workerd: `workerd serve workerd.capnp`, beside worker.mjs, the bundle of apps/api/src/edge.ts.
using Workerd = import "/workerd/workerd.capnp";

const config :Workerd.Config = (
  services = [(name = "pottle", worker = .pottle)],
  sockets = [(name = "http", address = "127.0.0.1:8787", http = (), service = "pottle")],
);

const pottle :Workerd.Worker = (
  modules = [(name = "worker", esModule = embed "worker.mjs")],
  compatibilityDate = "2026-01-01",
);
