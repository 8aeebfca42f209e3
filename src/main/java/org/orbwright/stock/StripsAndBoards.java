package org.orbwright.stock;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.segment.Yield;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.StockRequest.AllowancesRequest;

/** The strips that a design needs, wood by wood, and the boards that there are for them; lengths in millimetres. */
final class StripsAndBoards {
    private final Design design;
    private final Yield yields;
    private final SeamRules rules;
    private final List<Stock> rack;
    private final double stick;
    private final List<BlankKind> blanks;
    private final Map<String, Wood> woods;

    /** A wood: the strips that are needed of it, and its boards. */
    record Wood(WoodStrips strips, List<Stock> stock) {
        Wood {
            stock = List.copyOf(stock);
        }

        List<BoardKind> boards() {
            return stock.stream()
                    .map(one -> new BoardKind(
                            one.surfacing().length(),
                            one.surfacing().width(),
                            one.surfacing().thickness(),
                            one.board().count(),
                            one.cost(),
                            one.volume()))
                    .toList();
        }
    }

    /**
     * The needs of a design, for a section that is filled in.
     *
     * @throws ImpossibleDesignException if its seams contradict each other
     */
    StripsAndBoards(StockRequest request, Design design) {
        LengthUnit unit = design.unit();
        AllowancesRequest allowances = request.allowances();
        this.design = design;
        this.yields = YieldCalculator.calculate(design);
        boolean planned = yields.laminations().stream().anyMatch(lamination -> lamination.blanks() != null);
        this.rules = SeamRules.of(planned ? request.seams() : null, design);
        this.rack = Rack.of(request, unit);
        this.stick = design.thickness() / design.layers() + unit.toMillimetres(allowances.blankFlattening());
        this.blanks = BlankKind.of(design, yields);
        this.woods = new LinkedHashMap<>();
        double ripKerf = unit.toMillimetres(allowances.ripKerf());
        double planing = unit.toMillimetres(allowances.stripPlaning());
        WoodStrips.of(blanks, rules, new Sawn(stick, ripKerf, planing), design.woods())
                .forEach((name, strips) -> woods.put(name, new Wood(strips, boardsOf(name))));
    }

    /** How strips are sawn: their thickness, the kerf of a rip, and what is ripped wider than the band. */
    record Sawn(double stick, double ripKerf, double planing) {}

    private List<Stock> boardsOf(String wood) {
        return rack.stream().filter(one -> Objects.equals(woodOf(one), wood)).toList();
    }

    /** The one wood of the bands that a board's name may mean; null for none or several. */
    private String woodOf(Stock one) {
        List<String> woods =
                design.woods().among(one.board().species(), design.woodFields().keySet());
        return woods.size() == 1 ? woods.get(0) : null;
    }

    Yield yields() {
        return yields;
    }

    SeamRules rules() {
        return rules;
    }

    /** All boards, whether a band is of their wood or not. */
    List<Stock> rack() {
        return rack;
    }

    /** Thickness of every strip, as it leaves the saw. */
    double stick() {
        return stick;
    }

    List<BlankKind> blanks() {
        return blanks;
    }

    /** The woods, in the order of the bands. */
    Map<String, Wood> woods() {
        return woods;
    }
}
