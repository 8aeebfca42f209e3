// The volume of a band on the finished sphere by a boolean operation on meshes (manifold), for comparison with its closed
// form: how fine a sphere has to be for a given relative error, and how long one intersection with it takes. Meshes are made
// beforehand, and the sphere of triangles is given the true sphere's volume, which is to the boolean's advantage.
// Usage: node mesh.mjs BAND.json   (what RimBand prints); prints a line of JSON for each error.
import { readFileSync } from 'node:fs';
import load from 'manifold-3d';

const manifold = await load();
manifold.setup();
const { Manifold } = manifold;

const ERRORS = [1e-4, 1e-5];
const FINEST = 2048;
const ROUNDS = 15;

const band = JSON.parse(readFileSync(process.argv[2], 'utf8'));

// The band's wood before turning: the segment between hollow, seam, joints and outer face, above the line between bands.
function flatBand() {
  const corners = [];
  for (const z of [band.inner, band.face]) {
    const out = (band.base * z) / band.face;
    const wide = (band.half * z) / band.face;
    corners.push([0, 0, z], [out, wide, z], [out, -wide, z]);
  }
  return Manifold.hull(corners).trimByPlane([1, 0, 0], band.offset);
}

function sphere(segments) {
  const inscribed = Manifold.sphere(band.radius, segments);
  const scale = Math.cbrt(((4 / 3) * Math.PI * band.radius ** 3) / inscribed.volume());
  return inscribed.scale(scale);
}

function measure(flat, round) {
  const start = process.hrtime.bigint();
  const turned = flat.intersect(round);
  const volume = turned.volume();
  const took = Number(process.hrtime.bigint() - start);
  turned.delete();
  return { volume, took };
}

const median = (numbers) => numbers.sort((a, b) => a - b)[numbers.length >> 1];

const flat = flatBand();
const tried = [];
for (let segments = 32; segments <= FINEST; segments *= 2) {
  const round = sphere(segments);
  tried.push({ round, error: Math.abs(measure(flat, round).volume / band.volume - 1) });
}
for (const wanted of ERRORS) {
  // A coarse sphere may be right by chance: the one counts from which on all finer ones are right too.
  let first = tried.length;
  while (first > 0 && tried[first - 1].error <= wanted) {
    first--;
  }
  if (first < tried.length) {
    const { round, error } = tried[first];
    const nanoseconds = median(Array.from({ length: ROUNDS }, () => measure(flat, round).took));
    console.log(JSON.stringify({ wanted, error, triangles: round.numTri(), nanoseconds }));
  }
}
