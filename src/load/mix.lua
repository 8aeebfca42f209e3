-- A mixed workload for wrk: sheets, parts of them, drawings, bodies and plans of the worked designs and requests, drawn
-- at random from a fixed seed. The only argument is a mean pause in milliseconds between an answer and the connection's
-- next request; without it requests follow at once. Ends with a line of numbers for the script that runs it.
local DESIGNS = "src/main/resources/designs/"
local REQUESTS = "src/main/resources/requests/"
local designs = {
  "dodecahedron-two-spheres", "dodecahedron-vanishing-rim", "rhombic-triacontahedron", "truncated-icosahedron",
  "truncated-octahedron-alternating",
}
-- How often of a hundred requests, path, request example (none: a worked design; false: a GET).
local mix = {
  { 25, "/v1/sheet" }, { 15, "/v1/bands?stations=9" }, { 8, "/v1/angles" }, { 7, "/v1/segments" },
  { 12, "/v1/cell/blade-tilt?solid=dodecahedron", false }, { 5, "/v1/table/bands" }, { 3, "/v1/solids/cube", false },
  { 5, "/v1/drawings/sphere" }, { 4, "/v1/drawings/panel?format=dxf" }, { 1, "/v1/bodies/panel?format=3mf" },
  { 5, "/v1/turning", "planTurning" }, { 4, "/v1/jig", "planJig" }, { 3, "/v1/movement", "calculateMovement" },
  { 2, "/v1/inlays", "planInlays" }, { 1, "/v1/assembly", "planAssembly" },
}

local function read(path)
  local file = assert(io.open(path))
  local text = file:read("*a")
  file:close()
  return text
end

local function example(operation)
  local listing = io.popen("ls " .. REQUESTS .. operation .. "/*.json")
  local path = listing:read("*l")
  listing:close()
  return read(path)
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
      elseif kind[3] then
        request = wrk.format("POST", kind[2], JSON, example(kind[3]))
      else
        request = wrk.format("POST", kind[2], JSON, read(DESIGNS .. designs[i % #designs + 1] .. ".json"))
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
