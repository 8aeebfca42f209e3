-- A mixed workload for wrk: sheets, parts of them, drawings, bodies and plans of the worked documents, drawn
-- at random from a fixed seed. The only argument is a mean pause in milliseconds between an answer and the connection's
-- next request; without it requests follow at once. Ends with a line of numbers for the script that runs it.
local DESIGNS = "src/main/resources/designs/"
local designs = {
  "icosahedron-mixed", "icosahedron-vanishing-rim", "rhombic-triacontahedron", "truncated-icosahedron",
  "truncated-octahedron-alternating",
}
-- The one with every section.
local whole = "icosahedron-mixed"
-- How often of a hundred requests, path, document (none: one after the other; false: a GET).
local mix = {
  { 25, "/v1/sheet" }, { 15, "/v1/bands?stations=9" }, { 8, "/v1/angles" }, { 7, "/v1/segments" },
  { 12, "/v1/cell/blade-tilt?solid=icosahedron", false }, { 5, "/v1/table/bands" }, { 3, "/v1/solids/cube", false },
  { 5, "/v1/drawings/sphere" }, { 4, "/v1/drawings/panel?format=dxf" }, { 1, "/v1/bodies/panel?format=3mf" },
  { 5, "/v1/turning", whole }, { 4, "/v1/jig", whole }, { 3, "/v1/movement", whole },
  { 2, "/v1/inlays", whole }, { 1, "/v1/assembly", whole },
}

local function read(path)
  local file = assert(io.open(path))
  local text = file:read("*a")
  file:close()
  return text
end

local JSON = { ["Content-Type"] = "application/json" }
local prepared = {}
local pause = 0

function init(args)
  pause = tonumber(args[1] or "0")
  math.randomseed(20260101)
  for _, kind in ipairs(mix) do
    for i = 1, kind[1] do
      local request
      if kind[3] == false then
        request = wrk.format("GET", kind[2])
      else
        local design = kind[3] or designs[i % #designs + 1]
        request = wrk.format("POST", kind[2], JSON, read(DESIGNS .. design .. ".json"))
      end
      prepared[#prepared + 1] = request
    end
  end
end

function request()
  return prepared[math.random(#prepared)]
end

-- Evenly spread around the mean, so that connections do not fall into step.
function delay()
  return math.floor(2 * pause * math.random() + 0.5)
end

done = dofile("src/load/result.lua")
