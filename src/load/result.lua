-- The last line of a run of wrk, for the script that reads it (mix.sh).
return function(summary, latency)
  local errors = summary.errors
  io.write(string.format("result %d %d %d %d %.3f %.3f %.3f %.3f\n", summary.requests, summary.duration, errors.status,
    errors.connect + errors.read + errors.write + errors.timeout, latency.mean / 1000, latency:percentile(50) / 1000,
    latency:percentile(99) / 1000, latency:percentile(99.9) / 1000))
end
