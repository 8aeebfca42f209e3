package org.orbwright.drawing;

import org.orbwright.xml.Xml;

/**
 * Light and shadow on a ball in SVG: a radial gradient (SVG 1.1, section 13.2.3) of white where the light falls,
 * nothing around it and black towards the far rim. Its focus is where the ball faces the light.
 */
final class ShadeGradient {
    private static final String ID = "shade";
    private static final String LIGHT = "#ffffff";
    private static final String SHADOW = "#000000";

    /**
     * Where the ball faces the light, right of and below the corner of the box around it, in sides of the box. The
     * light comes from 40 degrees beside the eye: sin(40) / sqrt(2) = 0.45 radii from the middle both ways.
     */
    private static final String FOCUS = "0.275";

    private static final String[][] STOPS = {
        {"0", LIGHT, "0.3"},
        {"0.15", LIGHT, "0.19"},
        {"0.4", LIGHT, "0"},
        {"0.4", SHADOW, "0"},
        {"0.65", SHADOW, "0.13"},
        {"0.85", SHADOW, "0.32"},
        {"1", SHADOW, "0.52"}
    };

    private ShadeGradient() {}

    /** Defines the gradient, in shares of what it is laid on, so that one serves all balls of a drawing. */
    static void define(Xml xml, String prefix) {
        xml.open("radialGradient", "id", prefix + ID, "cx", "0.5", "cy", "0.5", "r", "0.5", "fx", FOCUS, "fy", FOCUS);
        for (String[] stop : STOPS) {
            xml.empty("stop", "offset", stop[0], "stop-color", stop[1], "stop-opacity", stop[2]);
        }
        xml.close(1);
    }

    /** Lays it on a ball. */
    static void lay(Shade shade, Xml xml, String prefix) {
        PathData ball = new PathData().circle(shade.x(), shade.y(), shade.radius());
        xml.empty("path", "d", ball.toString(), "fill", "url(#" + prefix + ID + ")");
    }
}
