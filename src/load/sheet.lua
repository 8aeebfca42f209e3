-- One worked design, again and again, to the address that is asked.
local file = assert(io.open("src/main/resources/designs/icosahedron-vanishing-rim.json"))
wrk.method = "POST"
wrk.headers["Content-Type"] = "application/json"
wrk.body = file:read("*a")
file:close()

done = dofile("src/load/result.lua")
