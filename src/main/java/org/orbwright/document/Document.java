package org.orbwright.document;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.orbwright.assembly.AssemblyRequest;
import org.orbwright.band.SolveRequest;
import org.orbwright.design.Copies;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BlankRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.design.DesignRequest.SawRequest;
import org.orbwright.design.DesignRequest.SizeRequest;
import org.orbwright.design.DesignRequest.SparesRequest;
import org.orbwright.design.DesignRequest.SphereRequest;
import org.orbwright.design.Sets;
import org.orbwright.diagnosis.DiagnosisRequest;
import org.orbwright.inlay.InlayRequest;
import org.orbwright.jig.JigRequest;
import org.orbwright.movement.MovementRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.stock.StockRequest;
import org.orbwright.tolerance.ToleranceRequest;
import org.orbwright.turning.BalanceRequest;
import org.orbwright.turning.PathRequest;
import org.orbwright.turning.TurningRequest;
import org.orbwright.wood.WoodRequest;

/**
 * One file for a whole build, as its author writes it: the design proper, and a section for each further address that
 * it is posted to. Lengths are in {@code unit}, angles in degrees, and what is left out is null.
 */
@Describe("One file for a whole build. The design stands at the top: one hollow solid of laminated segments, to be"
        + " turned into a sphere. Each section below bears the name of the address that uses it. Only unit, solid and"
        + " size are always needed; an answer says what is missing for the rest, and repeats what it used with"
        + " everything filled in.")
public record Document(
        @Describe(value = "A title for print-outs.", example = "\"Tide lamp (invented)\"", optional = true)
        @Size(max = 120)
        String name,

        @Describe(value = "The unit of every length in the document and in its answer.", example = "\"mm\"") @NotNull
        LengthUnit unit,

        @Describe(value = "The solid, by its name in the catalogue (GET /v1/solids).", example = "\"icosahedron\"")
        @NotBlank
        @Size(max = 60)
        String solid,

        @Describe(value = "How many spheres are wanted; 1 if left out.", example = "1", optional = true)
        @Min(1)
        @Max(1000)
        Integer copies,

        @Describe(value = "Which sets of segments the spheres are made from; TWINS if left out.", optional = true)
        Sets sets,

        @Describe(
                value = "Numbers of the panels that are made from inverted segments, as the catalogue numbers the"
                        + " solid's faces; with sets BY_PANEL alone.",
                quantity = Quantity.NUMBER,
                example = "[1, 4, 8]",
                optional = true)
        @Size(min = 1, max = 200)
        List<@NotNull @Min(1) @Max(200) Integer> invertedPanels,

        @Describe(value = "What is made beyond the count; nothing if left out.", optional = true) @Valid
        SparesRequest spares,

        @NotNull @Valid SizeRequest size,

        @Describe(value = "The panels. What depends on their thickness waits until it is stated.", optional = true)
        @Valid
        PanelRequest panel,

        @Describe(
                value = "The laminations: one for each face kind of the solid, or two where every other segment has"
                        + " its own. What depends on the bands waits until they are stated.",
                optional = true)
        @Size(min = 1, max = 6)
        List<@NotNull @Valid LaminationRequest> laminations,

        @Describe(
                value = "Woods that the table (GET /v1/woods) does not have, or has other numbers for. They are used"
                        + " wherever their names stand. None if left out.",
                optional = true)
        @Size(max = DesignRequest.MAX_WOODS)
        List<@NotNull @Valid WoodRequest> woods,

        @Describe(value = "The saw. What depends on its kerf waits until it is stated.", optional = true) @Valid
        SawRequest saw,

        @Describe(value = "The blank. What depends on its length waits until it is stated.", optional = true) @Valid
        BlankRequest blank,

        @Describe(value = "The finished sphere; the largest, with the usual allowances, if left out.", optional = true)
        @Valid
        SphereRequest sphere,

        @Describe(value = "For /v1/stock: the boards on the rack.", optional = true) @Valid
        StockRequest stock,

        @Describe(value = "For /v1/bands/solve: what should be seen of the bands.", optional = true) @Valid
        SolveRequest solve,

        @Describe(value = "For /v1/bands/explore: a sweep.", optional = true) @Valid
        ExploreRequest explore,

        @Describe(value = "For /v1/inlays: inlays and motifs.", optional = true) @Valid
        InlayRequest inlays,

        @Describe(value = "For /v1/jig: what settings are measured with.", optional = true) @Valid
        JigRequest jig,

        @Describe(value = "For /v1/tolerance: errors of cutting.", optional = true) @Valid
        ToleranceRequest tolerance,

        @Describe(value = "For /v1/diagnosis: what was measured.", optional = true) @Valid
        DiagnosisRequest diagnosis,

        @Describe(value = "For /v1/movement: moisture and grain.", optional = true) @Valid
        MovementRequest movement,

        @Describe(value = "For /v1/assembly: the glue.", optional = true) @Valid
        AssemblyRequest assembly,

        @Describe(value = "For /v1/turning: how the work is held, turned and finished.", optional = true) @Valid
        TurningRequest turning,

        @Describe(value = "For /v1/turning/path: the machine and its cutter.", optional = true) @Valid
        PathRequest path,

        @Describe(value = "For /v1/balance: what differs from panel to panel.", optional = true) @Valid
        BalanceRequest balance,

        @Describe(value = "For /v1/shop-sheet: the paper.", optional = true) @Valid
        PaperRequest paper) {

    public Document {
        invertedPanels = Copies.of(invertedPanels);
        laminations = Copies.of(laminations);
        woods = Copies.of(woods);
    }

    /** A document with a design and without sections. */
    public static Document of(DesignRequest design) {
        return of(design, Map.of());
    }

    /** A document with a design and these sections. */
    public static Document of(DesignRequest design, Map<Section, Record> sections) {
        return new Document(
                design.name(),
                design.unit(),
                design.solid(),
                design.copies(),
                design.sets(),
                design.invertedPanels(),
                design.spares(),
                design.size(),
                design.panel(),
                design.laminations(),
                design.woods(),
                design.saw(),
                design.blank(),
                design.sphere(),
                (StockRequest) sections.get(Section.STOCK),
                (SolveRequest) sections.get(Section.SOLVE),
                (ExploreRequest) sections.get(Section.EXPLORE),
                (InlayRequest) sections.get(Section.INLAYS),
                (JigRequest) sections.get(Section.JIG),
                (ToleranceRequest) sections.get(Section.TOLERANCE),
                (DiagnosisRequest) sections.get(Section.DIAGNOSIS),
                (MovementRequest) sections.get(Section.MOVEMENT),
                (AssemblyRequest) sections.get(Section.ASSEMBLY),
                (TurningRequest) sections.get(Section.TURNING),
                (PathRequest) sections.get(Section.PATH),
                (BalanceRequest) sections.get(Section.BALANCE),
                (PaperRequest) sections.get(Section.PAPER));
    }

    /** The design proper. */
    public DesignRequest design() {
        return new DesignRequest(
                name,
                unit,
                solid,
                copies,
                sets,
                invertedPanels,
                spares,
                size,
                panel,
                laminations,
                woods,
                saw,
                blank,
                sphere);
    }

    /** The sections that there are. */
    public Map<Section, Record> sections() {
        Map<Section, Record> sections = new EnumMap<>(Section.class);
        for (Section section : Section.values()) {
            Record written = section.of(this);
            if (written != null) {
                sections.put(section, written);
            }
        }
        return sections;
    }

    /** The same document with another design and these sections in place of its own. */
    public Document with(DesignRequest design, Map<Section, Record> others) {
        Map<Section, Record> sections = sections();
        sections.putAll(others);
        return of(design, sections);
    }

    /** The same document with a section in place of its own. */
    public Document with(Section section, Record written) {
        return with(design(), Map.of(section, written));
    }
}
