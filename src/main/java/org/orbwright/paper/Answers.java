package org.orbwright.paper;

import java.util.List;
import org.orbwright.assembly.AssemblyPlan;
import org.orbwright.design.Design;
import org.orbwright.document.PaperPart;
import org.orbwright.document.PaperRequest;
import org.orbwright.jig.JigPlan;
import org.orbwright.segment.SegmentPlan;
import org.orbwright.segment.Yield;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Finding;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.stock.StockPlan;
import org.orbwright.turning.TurningPlan;

/** A build's answer with its design and what is printed. What is null waits for something, and is not printed. */
record Answers(Design design, Answer build, PaperRequest paper) {

    /** Whether a part is printed. */
    boolean prints(PaperPart part) {
        return paper.parts().contains(part);
    }

    SegmentPlan segments() {
        return build.segments();
    }

    Yield yields() {
        return build.yield();
    }

    SphereSizing sphere() {
        return build.sphere();
    }

    JigPlan jig() {
        return build.jig();
    }

    StockPlan stock() {
        return build.stock();
    }

    AssemblyPlan assembly() {
        return build.assembly();
    }

    TurningPlan turning() {
        return build.turning();
    }

    List<Finding> findings() {
        return build.findings();
    }

    List<Caution> cautions() {
        return build.cautions();
    }

    /** An empty section. */
    SetUp section(String title) {
        return new SetUp(title, design.unit(), build.cautions());
    }
}
