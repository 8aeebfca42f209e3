package org.orbwright.api;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** The least and the largest first coordinate in a file of a body, as its numbers stand there. */
final class FileWidth {
    private FileWidth() {}

    static double[] of(String format, byte[] file) {
        double[] sorted = switch (format) {
            case "stl" -> stl(ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN));
            case "obj" -> matches("(?m)^v ([-0-9.eE]+) ", new String(file, StandardCharsets.UTF_8));
            case "3mf" -> matches("<vertex x=\"([-0-9.eE]+)\"", model(file));
            default -> throw new AssertionError("nobody here reads " + format);
        };
        return new double[] {sorted[0], sorted[sorted.length - 1]};
    }

    private static double[] stl(ByteBuffer file) {
        return IntStream.range(0, 3 * file.getInt(80))
                .mapToDouble(i -> file.getFloat(84 + 50 * (i / 3) + 12 * (1 + i % 3)))
                .sorted()
                .toArray();
    }

    private static double[] matches(String number, String text) {
        DoubleStream found =
                Pattern.compile(number).matcher(text).results().mapToDouble(r -> Double.parseDouble(r.group(1)));
        return found.sorted().toArray();
    }

    private static String model(byte[] file) {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().endsWith(".model")) {
                    return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        throw new AssertionError("no model");
    }
}
