package org.orbwright.body;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** What a body measures, part by part. */
@Describe("What a body measures, part by part.")
public record BodyNumbers(
        @Describe(value = "What it is.", example = "\"Sphere from an icosahedron\"")
        String title,

        @Describe(
                value = "The farthest that a mesh lies below what is round; 0 for a body without anything round.",
                quantity = Quantity.LENGTH,
                example = "0.0893")
        double deviation,

        @Describe(value = "Triangles of all parts.", example = "16452", max = 10_000_000)
        int triangles,

        @Describe("Its parts: one for each wood, or just one.")
        List<PartNumbers> parts) {

    /** Copies the list. */
    public BodyNumbers {
        parts = List.copyOf(parts);
    }

    /** The numbers of a body. */
    public static BodyNumbers of(Body body) {
        List<PartNumbers> parts = new ArrayList<>();
        for (Body.Part part : body.parts()) {
            Mesh mesh = part.mesh();
            Vector3D low = Vector3D.POSITIVE_INFINITY;
            Vector3D high = Vector3D.NEGATIVE_INFINITY;
            for (Vector3D v : mesh.vertices()) {
                low = Vector3D.of(
                        Math.min(low.getX(), v.getX()), Math.min(low.getY(), v.getY()), Math.min(low.getZ(), v.getZ()));
                high = Vector3D.of(
                        Math.max(high.getX(), v.getX()),
                        Math.max(high.getY(), v.getY()),
                        Math.max(high.getZ(), v.getZ()));
            }
            parts.add(new PartNumbers(
                    part.name(),
                    mesh.volume(),
                    part.volume(),
                    mesh.area(),
                    mesh.triangles().size(),
                    mesh.vertices().size(),
                    mesh.closed(),
                    BodyPoint.of(low),
                    BodyPoint.of(high)));
        }
        return new BodyNumbers(body.title(), body.deviation(), body.triangles(), parts);
    }

    /** One part of a body. */
    @Describe("One part of a body.")
    public record PartNumbers(
            @Describe(value = "Its wood, or what it is.", example = "\"white ash\"")
            String name,

            @Describe(value = "Volume inside its mesh.", quantity = Quantity.VOLUME, example = "1110009.9")
            double meshVolume,

            @Describe(
                    value = "Volume in closed form; left out where there is none: where the sphere breaks through.",
                    quantity = Quantity.VOLUME,
                    example = "1113021.4",
                    optional = true)
            Double volume,

            @Describe(value = "Area of its mesh.", quantity = Quantity.AREA, example = "277847.524")
            double area,

            @Describe(value = "Triangles of its mesh.", example = "8168", max = 10_000_000)
            int triangles,

            @Describe(value = "Corners of its mesh.", example = "4088", max = 10_000_000)
            int vertices,

            @Describe(
                    value = "Whether every edge of the mesh lies between two triangles that run along it in opposite"
                            + " directions.",
                    example = "true")
            boolean closed,

            @Describe("The least coordinates.") BodyPoint low,
            @Describe("The largest coordinates.") BodyPoint high) {}

    /** A point. */
    @Describe("A point of a body.")
    public record BodyPoint(
            @Describe(value = "First coordinate.", quantity = Quantity.LENGTH, example = "-102.9553", min = -1e18)
            double x,

            @Describe(value = "Second coordinate.", quantity = Quantity.LENGTH, example = "-102.9553", min = -1e18)
            double y,

            @Describe(value = "Third coordinate.", quantity = Quantity.LENGTH, example = "-102.9553", min = -1e18)
            double z) {
        static BodyPoint of(Vector3D point) {
            return new BodyPoint(point.getX(), point.getY(), point.getZ());
        }
    }
}
