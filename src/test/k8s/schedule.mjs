// Plays what a cluster does with a rendered Deployment: it is placed, rolled out, drained and scaled. Every order in which the
// scheduler, the kubelets, the controllers and a drain can act is tried, so nothing rests on a lucky choice.
// Each play has to end with all pods placed and ready. At any time all but one of the pods that there were at first have to
// be available, and at least one.
// Usage: node schedule.mjs FILE...
//
// The rules, all from kubernetes.io/docs, read in 2026:
// - concepts/scheduling-eviction/topology-spread-constraints: skew = matching pods in the node's domain, with the new one,
//   less the fewest in an eligible domain. Nodes without the topology key are left out. With nodeTaintsPolicy Honor tainted
//   nodes that the pod does not tolerate are left out too; by itself the policy is Ignore.
// - concepts/scheduling-eviction/taint-and-toleration: a cordoned node has the taint node.kubernetes.io/unschedulable.
// - concepts/workloads/controllers/deployment: maxSurge bounds all pods, maxUnavailable those that are not available.
// - tasks/run-application/configure-pdb: a ready pod is evicted while the budget allows it, one that is not ready always
//   (AlwaysAllow) or while enough others are ready.
//
// Left out: a pod that is deleted is gone at once, and what is only preferred (ScheduleAnyway, scores) is left to chance.
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { createRequire } from "node:module";

const require = createRequire(process.env.NODE_MODULES_FROM);
const { parseAllDocuments } = require("yaml");

const HOSTNAME = "kubernetes.io/hostname";
const NO_PODS = ["NoSchedule", "NoExecute"];
const CONTROL_PLANE = { key: "node-role.kubernetes.io/control-plane", effect: "NoSchedule" };
const CORDONED = { key: "node.kubernetes.io/unschedulable", effect: "NoSchedule" };
/** Room on a node for more pods than any play has. */
const AMPLE = 100;

/** What stands in a state for each node, by revision (0 is the old one), and after the nodes how many pods of either wait. */
const NOT_READY = [0, 2];
const READY = [1, 3];
const WIDTH = 4;

function read(file) {
  const objects = parseAllDocuments(readFileSync(file, "utf8")).map((document) => document.toJS());
  const one = (kind) => objects.find((object) => object.kind === kind)?.spec;
  const { replicas, strategy, template } = one("Deployment");
  const pod = template.spec;
  for (const field of ["affinity", "nodeSelector", "nodeName", "priorityClassName", "schedulerName"]) {
    if (pod[field]) throw new Error(`${file}: ${field} is no part of this model`);
  }
  const scaler = one("HorizontalPodAutoscaler");
  const budget = one("PodDisruptionBudget");
  const { maxSurge, maxUnavailable } = strategy.rollingUpdate;
  for (const number of [maxSurge, maxUnavailable, budget?.maxUnavailable ?? 0]) {
    if (!Number.isInteger(number)) throw new Error(`${file}: ${number} is no number of pods`);
  }
  return {
    least: scaler?.minReplicas ?? replicas,
    most: scaler?.maxReplicas ?? replicas,
    maxSurge,
    maxUnavailable,
    budget,
    labels: template.metadata.labels,
    tolerations: pod.tolerations ?? [],
    constraints: (pod.topologySpreadConstraints ?? []).filter((constraint) => constraint.whenUnsatisfiable === "DoNotSchedule"),
  };
}

const node = (name, room, ...taints) => ({ labels: { [HOSTNAME]: name, "topology.kubernetes.io/zone": "a" }, room, taints });
const workers = (count, room = AMPLE) => Array.from({ length: count }, (_, index) => node(`worker${index}`, room));

function takesPods(deployment, { taints }) {
  const tolerated = (taint) =>
    deployment.tolerations.some(
      ({ key, operator, value, effect }) =>
        (key === undefined || key === taint.key) &&
        (operator === "Exists" || value === taint.value) &&
        (effect === undefined || effect === taint.effect),
    );
  return taints.every((taint) => !NO_PODS.includes(taint.effect) || tolerated(taint));
}

const podsOf = (state, index, revision) => state[index * WIDTH + NOT_READY[revision]] + state[index * WIDTH + READY[revision]];
const podsOn = (state, index) => podsOf(state, index, 0) + podsOf(state, index, 1);

/** Whether the scheduler may place a pod of this revision on the node with this index. */
function mayPlace(deployment, nodes, state, index, revision) {
  if (!takesPods(deployment, nodes[index]) || podsOn(state, index) >= nodes[index].room) return false;
  const keys = deployment.constraints.map((constraint) => constraint.topologyKey);
  return deployment.constraints.every((constraint) => {
    const wanted = Object.entries(constraint.labelSelector.matchLabels);
    const selected = wanted.every(([key, value]) => deployment.labels[key] === value);
    const byRevision = constraint.matchLabelKeys?.includes("pod-template-hash");
    const domains = new Map();
    nodes.forEach((other, place) => {
      if (!keys.every((key) => key in other.labels)) return;
      if (constraint.nodeTaintsPolicy === "Honor" && !takesPods(deployment, other)) return;
      const domain = other.labels[constraint.topologyKey];
      const pods = !selected ? 0 : byRevision ? podsOf(state, place, revision) : podsOn(state, place);
      domains.set(domain, (domains.get(domain) ?? 0) + pods);
    });
    const own = nodes[index].labels[constraint.topologyKey];
    if (own === undefined) return false;
    const fewest = domains.size < (constraint.minDomains ?? 1) ? 0 : Math.min(...domains.values());
    return domains.get(own) + (selected ? 1 : 0) - fewest <= constraint.maxSkew;
  });
}

/** All states that one action leads to. The step says how many pods are wanted, of which revision, and which node is drained. */
function next(deployment, step, state) {
  const { nodes, want, current, drained } = step;
  const waiting = nodes.length * WIDTH;
  const found = [];
  const change = (...changes) => {
    const changed = [...state];
    for (const [place, by] of changes) changed[place] += by;
    found.push(changed);
  };
  const sum = (places) =>
    nodes.flatMap((_, index) => places.map((place) => state[index * WIDTH + place])).reduce((total, pods) => total + pods, 0);
  const ready = sum(READY);
  const old = sum([NOT_READY[1 - current], READY[1 - current]]) + state[waiting + 1 - current];
  const fresh = sum([NOT_READY[current], READY[current]]) + state[waiting + current];

  for (const revision of [0, 1]) {
    nodes.forEach((_, index) => {
      const notReady = index * WIDTH + NOT_READY[revision];
      if (state[notReady] > 0) change([notReady, -1], [index * WIDTH + READY[revision], 1]);
      if (state[waiting + revision] > 0 && mayPlace(deployment, nodes, state, index, revision)) {
        change([waiting + revision, -1], [notReady, 1]);
      }
    });
  }
  if (fresh < want && old + fresh < want + (old > 0 ? deployment.maxSurge : 0)) change([waiting + current, 1]);
  const needed = want - deployment.maxUnavailable;
  if (old > 0 && old + fresh - needed - (fresh - sum([READY[current]])) > 0) {
    const revision = 1 - current;
    if (state[waiting + revision] > 0) change([waiting + revision, -1]);
    nodes.forEach((_, index) => {
      if (state[index * WIDTH + NOT_READY[revision]] > 0) change([index * WIDTH + NOT_READY[revision], -1]);
      if (state[index * WIDTH + READY[revision]] > 0 && ready > needed) change([index * WIDTH + READY[revision], -1]);
    });
  }
  if (drained !== undefined) {
    const { budget } = deployment;
    const healthy = budget ? (budget.minAvailable ?? want - budget.maxUnavailable) : 0;
    for (const revision of [0, 1]) {
      const [notReady, isReady] = [NOT_READY, READY].map((places) => drained * WIDTH + places[revision]);
      if (state[isReady] > 0 && ready > healthy) change([isReady, -1], [waiting + revision, 1]);
      const free = budget?.unhealthyPodEvictionPolicy === "AlwaysAllow" || ready >= healthy;
      if (state[notReady] > 0 && free) change([notReady, -1], [waiting + revision, 1]);
    }
  }
  return found;
}

/** The state with nodes that are alike in one order, so that it is met once. */
function keyOf({ nodes }, state) {
  const alike = new Map();
  nodes.forEach(({ room, taints, apart }, index) => {
    const kind = JSON.stringify([room, taints, apart]);
    alike.set(kind, [...(alike.get(kind) ?? []), state.slice(index * WIDTH, (index + 1) * WIDTH).join()]);
  });
  return [...alike.values()].map((kind) => kind.sort().join(";")).join("|") + "|" + state.slice(nodes.length * WIDTH).join();
}

function explore(deployment, step, starts) {
  const seen = new Set();
  const ends = [];
  const open = [...starts];
  const result = { ends, jams: [], available: Infinity, states: 0 };
  while (open.length > 0) {
    const state = open.pop();
    const key = keyOf(step, state);
    if (seen.has(key)) continue;
    seen.add(key);
    const ready = step.nodes.reduce((total, _, index) => total + state[index * WIDTH + 1] + state[index * WIDTH + 3], 0);
    result.available = Math.min(result.available, ready);
    const following = next(deployment, step, state);
    open.push(...following);
    if (following.length > 0) continue;
    const fresh = step.nodes.reduce((total, _, index) => total + podsOf(state, index, step.current), 0);
    const emptied = step.drained === undefined || podsOn(state, step.drained) === 0;
    const gone = state.slice(-2).every((waiting) => waiting === 0);
    (fresh === step.want && ready === step.want && gone && emptied ? ends : result.jams).push(state);
  }
  result.states = seen.size;
  return result;
}

/** Plays steps one after another, each from all states that the one before it can end in. */
function play(deployment, nodes, steps) {
  const outcome = { available: Infinity, states: 0 };
  // A node that a later step takes away is no longer like the others, even before that.
  const taken = new Set(steps.flatMap(({ cordon, drain }) => [cordon, drain]));
  let step = { nodes: nodes.map((other, index) => ({ ...other, apart: taken.has(index) })), want: 0, current: 0 };
  let states = [Array(nodes.length * WIDTH + 2).fill(0)];
  for (const { place, cordon, drain, rollout, scale } of steps) {
    const off = cordon ?? drain;
    step = { ...step, drained: drain, want: place ?? scale ?? step.want, current: rollout ? 1 - step.current : step.current };
    const cordoned = (other) => ({ ...other, taints: [...other.taints, CORDONED] });
    step.nodes = step.nodes.map((other, index) => (index === off ? cordoned(other) : other));
    const { ends, jams, available, states: count } = explore(deployment, step, states);
    // While it is placed for the first time nothing can be available yet.
    if (place === undefined) outcome.available = Math.min(outcome.available, available);
    outcome.states += count;
    if (jams.length > 0) return { ...outcome, jam: jams[0].slice(-2)[0] + jams[0].slice(-2)[1] };
    if (ends.length === 0) throw new Error("a step has no end");
    states = ends;
  }
  return outcome;
}

function playsOf({ least, most, constraints }) {
  if (most === 1) return [["rollout on one node with room for two pods", workers(1, 2), { place: 1 }, { rollout: true }]];
  const three = workers(3);
  const withControlPlane = [...three, node("control-plane", AMPLE, CONTROL_PLANE)];
  const plays = [];
  for (const count of new Set([least, most])) {
    plays.push(
      [`rollout of ${count} on 3 workers and a tainted control plane`, withControlPlane, { place: count }, { rollout: true }],
      [`rollout of ${count} while one of 3 nodes is cordoned`, three, { place: count }, { cordon: 0 }, { rollout: true }],
      [`drain of one of 3 nodes with ${count}`, three, { place: count }, { drain: 0 }],
      [`drain of one of 2 nodes with ${count}`, workers(2), { place: count }, { drain: 0 }],
    );
  }
  plays.push(
    [`rollout of ${least} while one of 3 nodes is drained`, three, { place: least }, { drain: 0, rollout: true }],
    [`from ${least} to ${most} on 3 workers and a tainted control plane`, withControlPlane, { place: least }, { scale: most }],
    [`from ${least} to ${most} while one of 3 nodes is cordoned`, three, { place: least }, { cordon: 0 }, { scale: most }],
    [`rollout of ${least} on 3 nodes with room for one pod each`, workers(3, 1), { place: least }, { rollout: true }],
  );
  return plays;
}

/** The examples of the page on topology spread constraints: which nodes it says a pod can go to, and which the rule here says. */
function checkRule() {
  const ZONE = "topology.kubernetes.io/zone";
  const constraint = (topologyKey) => ({ maxSkew: 1, topologyKey, labelSelector: { matchLabels: { foo: "bar" } } });
  const labels = (zone, index) => ({ [HOSTNAME]: `${index}`, ...(zone === "-" ? {} : { [ZONE]: zone }) });
  const nodesIn = (zones) => [...zones].map((zone, index) => ({ labels: labels(zone, index), room: AMPLE, taints: [] }));
  const examples = [
    ["one constraint", "AABB", [1, 1, 1, 0], [ZONE], [2, 3]],
    ["two constraints", "AABB", [1, 1, 1, 0], [ZONE, HOSTNAME], [3]],
    ["constraints in conflict", "AAB", [2, 1, 2], [ZONE, HOSTNAME], []],
    ["a node without a zone", "-AB", [2, 1, 2], [ZONE], [1]],
  ];
  for (const [name, zones, pods, keys, expected] of examples) {
    const nodes = nodesIn(zones);
    const deployment = { labels: { foo: "bar" }, tolerations: [], constraints: keys.map(constraint) };
    const state = [...pods.flatMap((count) => [0, count, 0, 0]), 0, 0];
    const found = nodes.map((_, index) => index).filter((index) => mayPlace(deployment, nodes, state, index, 0));
    if (found.join() !== expected.join()) throw new Error(`the rule of spread is not that of Kubernetes: ${name}: ${found}`);
  }
}

checkRule();
for (const file of process.argv.slice(2)) {
  const deployment = read(file);
  for (const [name, nodes, ...steps] of playsOf(deployment)) {
    const { jam, available, states } = play(deployment, nodes, steps);
    const what = `${basename(file, ".yaml")}: ${name}`;
    const promised = Math.max(1, steps[0].place - 1);
    if (jam !== undefined || available < promised) process.exitCode = 1;
    if (jam !== undefined) console.error(`${what}: jams for ever (pods that wait for a node: ${jam})`);
    else if (available < promised) console.error(`${what}: only ${available} available at times`);
    else console.log(`${what}: all placed, at least ${available} available (${states} states)`);
  }
}
