package org.orbwright.paper;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.orbwright.drawing.PathData;
import org.orbwright.drawing.PathData.Arc;
import org.orbwright.drawing.PathData.Command;
import org.orbwright.drawing.PathData.Move;
import org.orbwright.drawing.PathData.Straight;

/**
 * Writes the course of a line as PDF operators. An arc becomes cubic curves of at most a quarter of its ellipse, which
 * leave it by no more than 3e-4 of its radius.
 */
final class PdfPath {
    private final PDPageContentStream out;
    private final double scale;
    private double x;
    private double y;
    private double startX;
    private double startY;

    private PdfPath(PDPageContentStream out, double scale) {
        this.out = out;
        this.scale = scale;
    }

    /**
     * Lays a path down, to be stroked or filled afterwards. The scale is the size on paper of one millimetre of the
     * path. It is scaled here and not by the page's matrix, whose numbers are written to five decimals only.
     */
    static void lay(PathData path, double scale, PDPageContentStream out) throws IOException {
        PdfPath writer = new PdfPath(out, scale);
        for (Command command : path.commands()) {
            writer.add(command);
        }
    }

    private void add(Command command) throws IOException {
        if (command instanceof Move move) {
            to(move.x(), move.y());
            startX = x;
            startY = y;
            out.moveTo(paper(x), paper(y));
        } else if (command instanceof Straight straight) {
            to(straight.x(), straight.y());
            out.lineTo(paper(x), paper(y));
        } else if (command instanceof Arc arc) {
            curve(arc);
        } else {
            to(startX, startY);
            out.closePath();
        }
    }

    private float paper(double length) {
        return (float) (scale * length);
    }

    private void to(double toX, double toY) {
        x = toX;
        y = toY;
    }

    /** The centre of an arc from its ends, on the circle that its ellipse is without its radii (SVG 1.1, F.6.5). */
    private void curve(Arc arc) throws IOException {
        double fromX = x / arc.radiusX();
        double fromY = y / arc.radiusY();
        double toX = arc.x() / arc.radiusX();
        double toY = arc.y() / arc.radiusY();
        double halfX = (fromX - toX) / 2;
        double halfY = (fromY - toY) / 2;
        double square = halfX * halfX + halfY * halfY;
        if (square > 0) {
            double root = Math.sqrt(Math.max(0, 1 / square - 1)) * (arc.large() == arc.clockwise() ? -1 : 1);
            double centreX = root * halfY + (fromX + toX) / 2;
            double centreY = -root * halfX + (fromY + toY) / 2;
            double start = Math.atan2(fromY - centreY, fromX - centreX);
            double turn = Math.atan2(toY - centreY, toX - centreX) - start;
            if (arc.clockwise() && turn < 0) {
                turn += 2 * Math.PI;
            } else if (!arc.clockwise() && turn > 0) {
                turn -= 2 * Math.PI;
            }
            double radius = Math.sqrt(Math.max(1, square));
            curves(arc, centreX, centreY, radius, start, turn);
        }
        to(arc.x(), arc.y());
    }

    private void curves(Arc arc, double centreX, double centreY, double radius, double start, double turn)
            throws IOException {
        int parts = (int) Math.max(1, Math.ceil(Math.abs(turn) / (Math.PI / 2) - 1e-9));
        double step = turn / parts;
        double handle = radius * 4 / 3 * Math.tan(step / 4);
        for (int i = 0; i < parts; i++) {
            double from = start + i * step;
            double to = from + step;
            out.curveTo(
                    paper(arc.radiusX() * (centreX + radius * Math.cos(from) - handle * Math.sin(from))),
                    paper(arc.radiusY() * (centreY + radius * Math.sin(from) + handle * Math.cos(from))),
                    paper(arc.radiusX() * (centreX + radius * Math.cos(to) + handle * Math.sin(to))),
                    paper(arc.radiusY() * (centreY + radius * Math.sin(to) - handle * Math.cos(to))),
                    paper(arc.radiusX() * (centreX + radius * Math.cos(to))),
                    paper(arc.radiusY() * (centreY + radius * Math.sin(to))));
        }
    }
}
