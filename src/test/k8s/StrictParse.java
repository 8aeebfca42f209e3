import io.fabric8.kubernetes.client.utils.KubernetesSerialization;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * Reads manifests into the typed model of the Java client for Kubernetes, and lets no field pass that the model does not
 * know. The exit code is 0 if all files are in order, otherwise 1.
 */
final class StrictParse {
    private static final String MODEL = "io.fabric8.";

    private final List<String> faults = new ArrayList<>();

    public static void main(String... files) throws Exception {
        StrictParse parse = new StrictParse();
        for (String file : files) {
            try {
                parse.walk(new KubernetesSerialization().unmarshal(Files.readString(Path.of(file))), file);
            } catch (IllegalArgumentException e) {
                parse.faults.add(file + ": " + e.getCause().getMessage());
            }
        }
        parse.faults.forEach(System.err::println);
        System.exit(parse.faults.isEmpty() ? 0 : 1);
    }

    private void walk(Object value, String where) throws ReflectiveOperationException {
        if (value instanceof Collection<?> list) {
            int index = 0;
            for (Object element : list) {
                walk(element, where + "/" + index++);
            }
        } else if (value instanceof Map<?, ?> map) {
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                walk(entry.getValue(), where + "/" + entry.getKey());
            }
        } else if (value != null && value.getClass().getName().startsWith(MODEL)) {
            walkModel(value, where);
        }
    }

    private void walkModel(Object value, String where) throws ReflectiveOperationException {
        if (value.getClass().getSimpleName().startsWith("GenericKubernetesResource")) {
            faults.add(where + ": a kind that the model does not know");
            return;
        }
        for (Method method : value.getClass().getMethods()) {
            boolean getter = method.getName().startsWith("get") && method.getParameterCount() == 0;
            if (method.getName().equals("getAdditionalProperties")) {
                Map<?, ?> unknown = (Map<?, ?>) method.invoke(value);
                if (unknown != null) {
                    unknown.keySet().forEach(key -> faults.add(where + ": unknown field " + key));
                }
            } else if (getter && !method.getName().equals("getClass")) {
                walk(method.invoke(value), where + "/" + method.getName().substring("get".length()));
            }
        }
    }
}
