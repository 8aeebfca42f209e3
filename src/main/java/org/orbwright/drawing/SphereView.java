package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A sphere seen from a direction without perspective; what lies behind its visible rim is cut off. */
final class SphereView {
    private final Vector3D right;
    private final Vector3D up;
    private final Vector3D towards;
    private final double radius;

    /** The view of a sphere with a radius; angles in radians as {@link SphereLook} has them. */
    SphereView(double azimuth, double elevation, double radius) {
        this.towards = Vector3D.of(
                Math.cos(elevation) * Math.cos(azimuth), Math.cos(elevation) * Math.sin(azimuth), Math.sin(elevation));
        this.right = Vector3D.of(-Math.sin(azimuth), Math.cos(azimuth), 0);
        this.up = towards.cross(right);
        this.radius = radius;
    }

    /** A point in view coordinates: right, up, and towards the eye. */
    Vector3D project(Vector3D point) {
        return Vector3D.of(point.dot(right), point.dot(up), point.dot(towards));
    }

    /** The visible part of a closed outline on the sphere, in view coordinates; empty if none is. */
    List<Vector3D> visibleArea(List<Vector3D> outline) {
        List<Vector3D> kept = new ArrayList<>();
        Vector3D leaving = null;
        Vector3D firstEntry = null;
        for (int i = 0; i < outline.size(); i++) {
            Vector3D a = outline.get(i);
            Vector3D b = outline.get((i + 1) % outline.size());
            if (a.getZ() >= 0) {
                kept.add(a);
            }
            if (a.getZ() >= 0 != b.getZ() >= 0) {
                Vector3D rim = rim(a, b);
                if (a.getZ() >= 0) {
                    kept.add(rim);
                    leaving = rim;
                } else {
                    if (leaving == null) {
                        firstEntry = rim;
                    } else {
                        kept.addAll(rimArc(leaving, rim));
                    }
                    kept.add(rim);
                }
            }
        }
        if (firstEntry != null && leaving != null) {
            kept.addAll(rimArc(leaving, firstEntry));
        }
        return kept;
    }

    /** The visible parts of an open line on the sphere, in view coordinates. */
    List<List<Vector3D>> visibleLines(List<Vector3D> line) {
        List<List<Vector3D>> parts = new ArrayList<>();
        List<Vector3D> part = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            Vector3D point = line.get(i);
            if (i > 0 && line.get(i - 1).getZ() >= 0 != point.getZ() >= 0) {
                part.add(rim(line.get(i - 1), point));
                if (point.getZ() < 0) {
                    parts.add(part);
                    part = new ArrayList<>();
                }
            }
            if (point.getZ() >= 0) {
                part.add(point);
            }
        }
        if (part.size() > 1) {
            parts.add(part);
        }
        return parts;
    }

    /** Where a short step on the sphere crosses the visible rim. */
    private Vector3D rim(Vector3D a, Vector3D b) {
        double share = a.getZ() / (a.getZ() - b.getZ());
        Vector3D crossing = a.add(b.subtract(a).multiply(share));
        double length = Math.hypot(crossing.getX(), crossing.getY());
        return Vector3D.of(crossing.getX() * radius / length, crossing.getY() * radius / length, 0);
    }

    /** Points along the visible rim between two of its points, by the shorter way. */
    private List<Vector3D> rimArc(Vector3D from, Vector3D to) {
        double start = Math.atan2(from.getY(), from.getX());
        double turn = Math.IEEEremainder(Math.atan2(to.getY(), to.getX()) - start, 2 * Math.PI);
        int steps = (int) Math.ceil(Math.abs(turn) / Flattening.step(radius, Flattening.TOLERANCE));
        List<Vector3D> points = new ArrayList<>();
        for (int i = 1; i < steps; i++) {
            double angle = start + turn * i / steps;
            points.add(Vector3D.of(radius * Math.cos(angle), radius * Math.sin(angle), 0));
        }
        return points;
    }
}
