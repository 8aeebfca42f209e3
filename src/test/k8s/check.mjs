// Checks rendered manifests against the JSON schemas of Kubernetes, of the Gateway API and of the Prometheus Operator, and what
// no schema says: that names and labels meet, that pods keep the "restricted" profile, that images are pinned, that health
// and metrics are not handed out, and that every shard of the example is there.
// Usage: node check.mjs FILE...
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const require = createRequire(process.env.NODE_MODULES_FROM);
const { parseAllDocuments } = require("yaml");
const faults = [];
/** Where the kinds are that are not Kubernetes' own. */
const LIBRARIES = {
  "gateway.networking.k8s.io": "@kubernetes-models/gateway-api",
  "monitoring.coreos.com": "@kubernetes-models/prometheus-operator",
};
/** A tag that is no moving one, or a digest. */
const PINNED = /^[^:@]+(:[0-9]+\/[^:@]+)?(:(?!latest$)[\w][\w.-]*|(:[\w][\w.-]*)?@sha256:[0-9a-f]{64})$/;
/** What a proxy for strangers must not lead to. */
const PRIVATE = ["/q/health", "/q/metrics"];

function check(file) {
  const objects = parseAllDocuments(readFileSync(file, "utf8")).map((document) => {
    if (document.errors.length > 0) throw document.errors[0];
    return document.toJS();
  });
  for (const object of objects) {
    const fault = (text) => faults.push(`${file}: ${object.kind} ${object.metadata?.name}: ${text}`);
    if (checkSchema(object, fault)) checkMeaning(object, objects, fault);
  }
}

/** Whether the schema takes the object; what else is looked at relies on that. */
function checkSchema(object, fault) {
  const library = LIBRARIES[object.apiVersion.split("/")[0]] ?? "kubernetes-models";
  const Type = require(`${library}/${object.apiVersion}`)[object.kind];
  if (!Type) {
    fault("there is no such kind");
    return false;
  }
  // Kustomize breaks lines of base64, which Kubernetes takes and the schema's format does not.
  const whole = object.kind === "Secret" ? { ...object, data: withoutBreaks(object.data) } : object;
  try {
    new Type(whole).validate();
    return true;
  } catch (error) {
    fault(error.message);
    return false;
  }
}

function withoutBreaks(data) {
  return Object.fromEntries(Object.entries(data).map(([name, text]) => [name, text.replace(/\n/g, "")]));
}

function checkMeaning(object, objects, fault) {
  const pods = objects.filter((other) => other.spec?.template?.spec);
  const matches = (labels) =>
    pods.some((pod) => Object.entries(labels ?? {}).every(([key, value]) => pod.spec.template.metadata.labels[key] === value));
  const spec = object.spec;
  if (object.kind !== "Namespace" && object.metadata.namespace !== "orbwright") fault("is in no namespace, or another");
  if (object.kind === "Service" && !matches(spec.selector)) fault("selects no pod");
  if (["PodDisruptionBudget", "Deployment"].includes(object.kind) && !matches(spec.selector.matchLabels)) fault("selects no pod");
  if (object.kind === "NetworkPolicy") {
    if (!matches(spec.podSelector.matchLabels)) fault("selects no pod");
    const ports = pods.flatMap((pod) => pod.spec.template.spec.containers).flatMap((container) => container.ports ?? []);
    for (const { port } of (spec.ingress ?? []).flatMap((rule) => rule.ports ?? [])) {
      if (!ports.some((other) => other.name === port || other.containerPort === port)) fault(`opens no port ${port}`);
    }
  }
  if (object.kind === "HorizontalPodAutoscaler") {
    const { kind, name } = spec.scaleTargetRef;
    const target = objects.find((other) => other.kind === kind && other.metadata.name === name);
    if (!target) fault("scales nothing");
    if (target?.spec.replicas !== undefined) fault("its target has a number of replicas, which would be set back each time");
  }
  if (object.kind === "Ingress") checkIngress(spec, objects, fault);
  if (object.kind === "HTTPRoute") checkRoute(spec, objects, fault);
  if (object.kind === "Gateway") {
    const encrypts = ({ protocol, tls }) => protocol === "HTTPS" && tls?.certificateRefs?.length > 0;
    if (!spec.listeners.every(encrypts)) fault("listens without a certificate");
  }
  if (object.kind === "ServiceMonitor") checkMonitor(spec, objects, fault);
  if (spec?.template?.spec) checkPod(object.kind, spec.template.spec, objects, fault);
  if (object.kind === "Job") checkShards(spec, objects, fault);
}

function checkPod(kind, pod, objects, fault) {
  const demand = (holds, text) => holds || fault(text);
  demand(pod.securityContext?.runAsNonRoot === true, "may run as root");
  demand(pod.securityContext?.seccompProfile?.type === "RuntimeDefault", "has no seccomp profile");
  demand(pod.automountServiceAccountToken === false, "has a token of the cluster");
  checkSpread(pod, fault);
  for (const container of pod.containers) {
    const security = container.securityContext;
    demand(security?.allowPrivilegeEscalation === false, "may gain rights");
    demand(security?.readOnlyRootFilesystem === true, "may write to its root");
    demand(security?.capabilities?.drop?.includes("ALL"), "keeps capabilities");
    for (const what of ["cpu", "memory"]) {
      demand(container.resources?.requests?.[what], `requests no ${what}`);
      demand(container.resources?.limits?.[what], `has no limit of ${what}`);
    }
    demand(PINNED.test(container.image), `has an image without a fixed tag or digest, ${container.image}`);
    checkKeys(container, pod, objects, demand);
    if (kind === "Deployment") {
      for (const probe of ["startupProbe", "readinessProbe", "livenessProbe"]) {
        const port = container[probe]?.httpGet?.port;
        demand(container.ports.some((other) => other.name === port), `has no ${probe} at a port of its own`);
      }
    }
    for (const mount of container.volumeMounts ?? []) {
      demand(pod.volumes?.some((volume) => volume.name === mount.name), `mounts no volume ${mount.name}`);
      demand(!mount.subPath, `mounts ${mount.name} by subPath, where changes of it do not come`);
    }
  }
  for (const volume of (pod.volumes ?? []).filter((other) => !other.emptyDir)) {
    const name = volume.configMap?.name ?? volume.secret?.secretName ?? volume.persistentVolumeClaim?.claimName;
    const kindOfVolume = volume.configMap ? "ConfigMap" : volume.secret ? "Secret" : "PersistentVolumeClaim";
    demand(objects.some((other) => other.kind === kindOfVolume && other.metadata.name === name), `there is no volume ${name}`);
  }
}

const serviceWith = (objects, name, port) =>
  objects.some(
    ({ kind, metadata, spec }) =>
      kind === "Service" && metadata.name === name && spec.ports.some((other) => other.name === port || other.port === port),
  );

/** Whether a path that leads to all below it leads to what is private. */
const leadsAstray = (path) => PRIVATE.some((address) => `${address}/`.startsWith(path.replace(/\/*$/, "/")));

function checkIngress(spec, objects, fault) {
  const encrypted = (spec.tls ?? []).filter((tls) => tls.secretName).flatMap((tls) => tls.hosts);
  for (const rule of spec.rules) {
    if (!encrypted.includes(rule.host)) fault(`${rule.host} is not encrypted`);
    for (const { path, backend } of rule.http.paths) {
      const { name, port } = backend.service;
      if (!serviceWith(objects, name, port.name ?? port.number)) fault(`${path} leads to no service`);
      if (leadsAstray(path)) fault(`${path} leads to what is private`);
    }
  }
  if (spec.defaultBackend) fault("leads everything to its default backend");
}

function checkRoute(spec, objects, fault) {
  for (const { name } of spec.parentRefs) {
    const gateway = objects.find((other) => other.kind === "Gateway" && other.metadata.name === name);
    const heard = gateway?.spec.listeners.map((listener) => listener.hostname) ?? [];
    if (!spec.hostnames.every((host) => heard.includes(host))) fault(`no gateway ${name} listens to its hosts`);
  }
  for (const { matches, backendRefs } of spec.rules) {
    if (!backendRefs.every(({ name, port }) => serviceWith(objects, name, port))) fault("leads to no service");
    for (const { path } of matches ?? [{ path: { value: "/" } }]) {
      if (leadsAstray(path.value)) fault(`${path.value} leads to what is private`);
    }
  }
}

function checkMonitor(spec, objects, fault) {
  const services = objects.filter(
    ({ kind, metadata }) =>
      kind === "Service" && Object.entries(spec.selector.matchLabels).every(([key, value]) => metadata.labels?.[key] === value),
  );
  if (services.length === 0) fault("watches no service");
  for (const { port } of spec.endpoints) {
    if (!services.every(({ metadata }) => serviceWith(objects, metadata.name, port))) fault(`watches no port ${port}`);
  }
  const callers = objects
    .filter(({ kind }) => kind === "NetworkPolicy")
    .flatMap((policy) => policy.spec.ingress.flatMap((rule) => rule.from ?? []));
  const monitoring = (from) => from.namespaceSelector?.matchLabels?.["kubernetes.io/metadata.name"] === "monitoring";
  if (!callers.some(monitoring)) fault("nothing lets its Prometheus in");
}

/** The file of keys that the service is told of is one of a mounted Secret, with lines as the service reads them. */
function checkKeys(container, pod, objects, demand) {
  const path = container.env?.find((variable) => variable.name === "ORBWRIGHT_ACCESS_KEYS")?.value;
  if (path === undefined) return;
  const mount = container.volumeMounts.find((other) => path.startsWith(other.mountPath + "/"));
  const secret = pod.volumes.find((volume) => volume.name === mount?.name)?.secret?.secretName;
  const data = objects.find((other) => other.kind === "Secret" && other.metadata.name === secret)?.data;
  const keys = Buffer.from(data?.[path.slice(mount?.mountPath.length + 1)] ?? "", "base64").toString();
  const lines = keys.split("\n").map((line) => line.replace(/#.*/, "").trim()).filter((line) => line !== "");
  demand(lines.length > 0, "has no file of keys where it looks for it");
  demand(lines.every((line) => /^[\w.-]{1,64}\s+[0-9a-f]{64}$/i.test(line)), "has keys that the service refuses");
}

/** Constraints that spread pods by the same kind of place are not there twice. */
function checkSpread(pod, fault) {
  const places = (pod.topologySpreadConstraints ?? []).map((constraint) => constraint.topologyKey);
  if (new Set(places).size < places.length) fault("is spread twice over the same places");
}

function checkShards(spec, objects, fault) {
  const pod = spec.template.spec;
  if (spec.completionMode !== "Indexed") fault("is not indexed");
  if (!pod.containers[0].args.some((word) => word.includes("$(JOB_COMPLETION_INDEX)"))) fault("its pods all do the same");
  const files = objects.find((other) => other.kind === "ConfigMap" && other.metadata.name === pod.volumes[0].configMap?.name)?.data;
  for (let index = 0; files && index < spec.completions; index++) {
    const lines = files[`${index}.ndjson`]?.trim().split("\n") ?? [];
    if (lines.length === 0) fault(`there is no shard ${index}`);
    lines.forEach((line) => JSON.parse(line));
  }
}

process.argv.slice(2).forEach(check);
faults.forEach((text) => console.error(text));
process.exitCode = faults.length > 0 ? 1 : 0;
