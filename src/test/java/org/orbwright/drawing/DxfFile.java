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

    /** An entity with its groups; a polyline has the points of its vertices. */
    record Entity(String type, Map<Integer, String> groups, List<double[]> points) {
        String layer() {
            return groups.get(8);
        }

        double number(int code) {
            return Double.parseDouble(groups.get(code));
        }

        boolean closed() {
            return type.equals("POLYLINE") && groups.get(70).equals("1");
        }

        double area() {
            double twice = 0;
            for (int i = 0; i < points.size(); i++) {
                double[] a = points.get(i);
                double[] b = points.get((i + 1) % points.size());
                twice += a[0] * b[1] - b[0] * a[1];
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
        List<String> layers = new ArrayList<>();
        for (int i = 0; i + 1 < pairs.size(); i++) {
            if (pairs.get(i).equals(new Pair(0, "LAYER"))) {
                layers.add(pairs.get(i + 1).value());
            }
        }
        return layers;
    }

    /** The entities. */
    List<Entity> entities() {
        List<Entity> entities = new ArrayList<>();
        int start = pairs.indexOf(new Pair(2, "ENTITIES")) + 1;
        for (int i = start; !pairs.get(i).equals(new Pair(0, "ENDSEC")); ) {
            Map<Integer, String> groups = new LinkedHashMap<>();
            String type = pairs.get(i).value();
            for (i++; pairs.get(i).code() != 0; i++) {
                groups.put(pairs.get(i).code(), pairs.get(i).value());
            }
            if (type.equals("VERTEX")) {
                entities.get(entities.size() - 1)
                        .points()
                        .add(new double[] {Double.parseDouble(groups.get(10)), Double.parseDouble(groups.get(20))});
            } else if (!type.equals("SEQEND")) {
                entities.add(new Entity(type, groups, new ArrayList<>()));
            }
        }
        return entities;
    }

    /** Area of the closed outlines on a layer. */
    double area(String layer) {
        return entities().stream()
                .filter(entity -> entity.closed() && entity.layer().equals(layer))
                .mapToDouble(Entity::area)
                .sum();
    }
}
