package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Chain;
import org.orbwright.drawing.Outline.Note;
import org.orbwright.drawing.Outline.Round;
import org.orbwright.drawing.Outline.Shape;

/** The picture of outlines at true size, with the measures that they are made by. */
public final class OutlineDrawing {
    private static final double SHEET_PER_WIDTH = 1.35;
    private static final double SHEET_PER_HEIGHT = 0.95;

    private final OutlineSheet sheet;
    private final Outline outline;
    private final double width;
    private final double letters;
    private final double centreX;
    private final double centreY;
    private final double bottom;
    private final List<Mark> marks = new ArrayList<>();

    private OutlineDrawing(OutlineSheet sheet) {
        this.sheet = sheet;
        this.outline = sheet.outline();
        OutlineExtent extent = OutlineExtent.of(outline);
        this.width = Math.max(SHEET_PER_WIDTH * extent.width(), SHEET_PER_HEIGHT * extent.height());
        this.letters = Legend.letters(width);
        this.centreX = width / 2 - (extent.left() + extent.right()) / 2;
        this.centreY = 5 * letters + extent.high();
        this.bottom = centreY - extent.low() + 7.5 * letters;
    }

    /** Draws outlines of a design. */
    public static Drawing draw(Design design, OutlineSheet sheet) {
        return new OutlineDrawing(sheet).drawing(design);
    }

    private Drawing drawing(Design design) {
        marks.add(Callout.heading(outline.title(), width, letters));
        outline.shapes().forEach(this::line);
        sheet.measures().forEach(this::measure);
        marks.addAll(ScaleBar.marks(design.unit(), width, bottom));
        double captionTop = bottom + ScaleBar.HEIGHT * letters;
        List<String> lines = Lettering.wrap(sheet.caption(), width * 0.94, letters);
        marks.addAll(Callout.text(width * 0.03, captionTop, letters, Anchor.START, lines));
        double end = captionTop + Callout.textHeight(lines.size(), letters) + 1.5 * letters;
        String description = outline.title() + " at true size. " + sheet.caption();
        return new Drawing(outline.title(), description, width, end, List.of(), marks);
    }

    private double x(At at) {
        return centreX + at.x();
    }

    private double y(At at) {
        return centreY - at.y();
    }

    private void line(Shape shape) {
        if (shape instanceof Note) {
            return;
        }
        Pen pen = switch (shape.layer().kind()) {
            case OUTLINE -> Pen.THICK;
            case SPHERE_RIM, SCREW_CIRCLE -> Pen.DASHED;
            case JOINT, CENTRE -> Pen.THIN;
            default -> Pen.MEDIUM;
        };
        marks.add(new Line(path(shape), pen));
    }

    private PathData path(Shape shape) {
        if (shape instanceof Round round) {
            return new PathData().circle(x(round.centre()), y(round.centre()), round.radius());
        }
        PathData path = new PathData();
        if (shape instanceof Chain chain) {
            path.lines(
                    chain.points().stream().map(at -> new Point(x(at), y(at))).toList());
            if (chain.bulge() != 0) {
                At end = chain.points().get(0);
                path.arcTo(
                        chain.radius(), chain.radius(), Math.abs(chain.bulge()) > 1, chain.bulge() < 0, x(end), y(end));
            }
            return chain.closed() ? path.close() : path;
        }
        return path;
    }

    private void measure(OutlineSheet.Measure measure) {
        double away = measure.away() * letters;
        double length = Math.hypot(
                measure.to().x() - measure.from().x(),
                measure.to().y() - measure.from().y());
        double acrossX = (measure.to().y() - measure.from().y()) / length * away;
        double acrossY = (measure.from().x() - measure.to().x()) / length * away;
        At from = new At(measure.from().x() + acrossX, measure.from().y() + acrossY);
        At to = new At(measure.to().x() + acrossX, measure.to().y() + acrossY);
        marks.add(Callout.dimension(x(from), y(from), x(to), y(to), letters / 3));
        At middle = new At((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
        boolean upright = Math.abs(to.x() - from.x()) < Math.abs(to.y() - from.y());
        marks.add(new Label(
                x(middle) + (upright ? 0.5 * letters : 0),
                y(middle) + (upright ? 0.36 : 1.4) * letters,
                letters,
                upright ? Anchor.START : Anchor.MIDDLE,
                measure.text(),
                Letters.CASED));
    }
}
