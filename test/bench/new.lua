-- A hundred thousand phrases, all different, from one of them on: `wrk -s new.lua URL -- ROUTE FIRST`.
local measures = { 'pint', 'pound', 'quart', 'peck', 'gill', 'ounce', 'pottle', 'gallon', 'bushel', 'dram' }
local things = { 'cream', 'flour', 'sugar', 'butter', 'ale', 'sack', 'almonds', 'currants', 'honey', 'vinegar' }
local paths, at = {}, 0

function init(words)
  for i = 0, 999 do
    for j = 0, 9 do
      for k = 0, 9 do
        local year = 1600 + ((i * 37 + j * 11 + k * 5) % 25) * 10
        paths[#paths + 1] = words[1] .. '?phrase=' .. (i + 1) .. '+' .. measures[j + 1] .. 's+of+' .. things[k + 1] .. '&year=' .. year
      end
    end
  end
  at = tonumber(words[2])
end

function request()
  at = at % #paths + 1
  return wrk.format('GET', paths[at])
end
