package org.orbwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;

/** The optional sections of a document, in the order of the document. */
public enum Section {
    /** The boards on the rack. */
    STOCK,
    /** What should be seen of the bands. */
    SOLVE,
    /** A sweep. */
    EXPLORE,
    /** Inlays. */
    INLAYS,
    /** What settings of the saw are measured with. */
    JIG,
    /** Errors of cutting. */
    TOLERANCE,
    /** Measurements. */
    DIAGNOSIS,
    /** Moisture and grain. */
    MOVEMENT,
    /** Glue. */
    ASSEMBLY,
    /** The work on the lathe. */
    TURNING,
    /** A cutter's way over the sphere. */
    PATH,
    /** What differs from panel to panel. */
    BALANCE,
    /** Paper. */
    PAPER;

    /** The section as the document has it, or null. */
    Record of(Document document) {
        return switch (this) {
            case STOCK -> document.stock();
            case SOLVE -> document.solve();
            case EXPLORE -> document.explore();
            case INLAYS -> document.inlays();
            case JIG -> document.jig();
            case TOLERANCE -> document.tolerance();
            case DIAGNOSIS -> document.diagnosis();
            case MOVEMENT -> document.movement();
            case ASSEMBLY -> document.assembly();
            case TURNING -> document.turning();
            case PATH -> document.path();
            case BALANCE -> document.balance();
            case PAPER -> document.paper();
        };
    }

    /**
     * A section that something cannot do without.
     *
     * @param written what the document has, or null
     * @param what what depends on it, as the subject of a sentence: "the path depends"
     * @throws ImpossibleDesignException if the document does not have it
     */
    public <T extends Record> T required(T written, String what) {
        if (written == null) {
            throw new ImpossibleDesignException(List.of(missing(what)));
        }
        return written;
    }

    /**
     * The same together with parts of the design, so that all that is missing is told at once.
     *
     * @param parts what is needed of it too
     */
    public <T extends Record> T required(T written, String what, Design design, DesignPart... parts) {
        List<Violation> missing = new ArrayList<>(design.missing(what, parts));
        if (written == null) {
            missing.add(missing(what));
        }
        if (!missing.isEmpty()) {
            throw new ImpossibleDesignException(missing);
        }
        return written;
    }

    private Violation missing(String what) {
        return Violation.missing(pointer(), "the section " + text(), what, "the section " + text());
    }

    /** Its name in the document. */
    public String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** JSON pointer (RFC 6901) to it. */
    public String pointer() {
        return "/" + text();
    }
}
