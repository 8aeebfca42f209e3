package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A drawing interchange file as pairs of a group code and a value, read by the reference's rules alone: entities begin
 * at group 0.
 *
 * @param pairs the pairs in order
 */
record DxfFile(List<DxfFile.Pair> pairs) {

    /** A group code and its value. */
    record Pair(int code, String value) {}

    /** An entity with its groups; a polyline has its vertices: x, y and bulge. */
    record Entity(String type, Map<Integer, String> groups, List<double[]> points) {
        String layer() {
            return groups.get(8);
        }

        double number(int code) {
            return Double.parseDouble(groups.get(code));
        }

        boolean closed() {
            return type.endsWith("POLYLINE") && groups.get(70).equals("1");
        }

        double area() {
            double twice = 0;
            for (int i = 0; i < points.size(); i++) {
                double[] a = points.get(i);
                double[] b = points.get((i + 1) % points.size());
                twice += a[0] * b[1] - b[0] * a[1];
                // Autodesk, DXF Reference: a bulge is the tangent of a quarter of the angle, negative if clockwise.
                double angle = 4 * Math.atan(a[2]);
                double radius = Math.hypot(b[0] - a[0], b[1] - a[1]) / (2 * Math.sin(angle / 2));
                twice += a[2] == 0 ? 0 : radius * radius * (angle - Math.sin(angle));
            }
            return Math.abs(twice) / 2;
        }
    }

    static DxfFile of(String text) {
        List<Pair> pairs = new ArrayList<>();
        String[] lines = text.split("\n", -1);
        for (int i = 0; i + 1 < lines.length; i += 2) {
            pairs.add(new Pair(Integer.parseInt(lines[i].strip()), lines[i + 1]));
        }
        return new DxfFile(pairs);
    }

    /** The value of a header variable. */
    String header(String variable) {
        return pairs.get(pairs.indexOf(new Pair(9, variable)) + 1).value();
    }

    /** Names of the layers. */
    List<String> layers() {
        return List.copyOf(layerValues(2).values());
    }

    /** The entities. */
    List<Entity> entities() {
        List<Entity> entities = new ArrayList<>();
        int start = pairs.indexOf(new Pair(2, "ENTITIES")) + 1;
        for (int i = start; !pairs.get(i).equals(new Pair(0, "ENDSEC")); ) {
            Map<Integer, String> groups = new LinkedHashMap<>();
            String type = pairs.get(i).value();
            List<double[]> points = new ArrayList<>();
            for (i++; pairs.get(i).code() != 0; i++) {
                groups.put(pairs.get(i).code(), pairs.get(i).value());
                if (type.equals("LWPOLYLINE") || type.equals("VERTEX")) {
                    vertex(points, pairs.get(i));
                }
            }
            if (type.equals("VERTEX")) {
                entities.get(entities.size() - 1).points().addAll(points);
            } else if (!type.equals("SEQEND")) {
                entities.add(new Entity(type, groups, points));
            }
        }
        return entities;
    }

    /** A vertex begins with its x. */
    private static void vertex(List<double[]> points, Pair pair) {
        int place = Map.of(10, 0, 20, 1, 42, 2).getOrDefault(pair.code(), -1);
        if (place == 0) {
            points.add(new double[3]);
        }
        if (place >= 0) {
            points.get(points.size() - 1)[place] = Double.parseDouble(pair.value());
        }
    }

    /** What a name stands for in the table of layers: the values of a group. */
    Map<String, String> layerValues(int code) {
        Map<String, String> values = new LinkedHashMap<>();
        String name = "";
        boolean layer = false;
        for (Pair pair : pairs) {
            layer = pair.code() == 0 ? pair.value().equals("LAYER") : layer;
            name = layer && pair.code() == 2 ? pair.value() : name;
            if (layer && pair.code() == code) {
                values.put(name, pair.value());
            }
        }
        return values;
    }

    /** Area of the closed outlines on a layer. */
    double area(String layer) {
        return entities().stream()
                .filter(entity -> entity.closed() && entity.layer().equals(layer))
                .mapToDouble(Entity::area)
                .sum();
    }
}
