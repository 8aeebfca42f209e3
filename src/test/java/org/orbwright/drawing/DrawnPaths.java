package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Paths of straight parts, read back from their path data. */
final class DrawnPaths {
    private DrawnPaths() {}

    /** The parts of a path; a closed one ends where it starts. */
    static List<List<Coordinate>> parts(PathData path) {
        List<List<Coordinate>> parts = new ArrayList<>();
        for (String part : path.toString().split("M", -1)) {
            if (part.isEmpty()) {
                continue;
            }
            List<Coordinate> points = new ArrayList<>();
            for (String point : part.replace("Z", "").split("L", -1)) {
                String[] numbers = point.split(" ", -1);
                points.add(new Coordinate(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])));
            }
            if (part.endsWith("Z")) {
                points.add(points.get(0));
            }
            parts.add(points);
        }
        return parts;
    }
}
