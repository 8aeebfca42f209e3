/**
 * From the boards on the rack to the last strip: what is left of a board that was made flat, and how boards are cut.
 * Strips are made up of pieces and glued side by side. What is missing is told, what would help, and what a rack gives
 * at all. Start with {@link org.orbwright.stock.StockCalculator} and {@link org.orbwright.stock.ReachCalculator}; the
 * search is in {@link org.orbwright.stock.StripPlanner} and {@link org.orbwright.stock.WoodPlanner}.
 *
 * <p><b>What is planned.</b> A board is crosscut to sections, a section is ripped into lanes, and a lane is sliced or
 * resawn once more. In a resawn lane all strips have one width. More stages would need a saw to cross its own cuts. A
 * strip is in one piece or made up of pieces. A longer piece serves as a shorter one. Aims come one after another: the
 * fewest missing strips, then the cost, the wood or the seams, as asked, then the others. Last, as few seams as can be
 * lie within segments. Each aim is a search of its own that may not lose what those before gained, and begins at their
 * plan.
 *
 * <p><b>Cut lists</b> hold the cuts that the plan laid out ({@link org.orbwright.stock.CutList}). Each section, stick
 * and strip comes of exactly one step, so that a list can be followed with a tape. What was there, less the part and
 * the kerf, is what is left.
 *
 * <p><b>Wood by wood, then side by side.</b> Each wood is an integer program of its own ({@code CuttingModel}), as if
 * seams of neighbours could lie side by side. No plan can be better than that. Then strips are chosen for each other so
 * that their seams keep the clearance ({@code SeamArranger}, a flow from band to band). Where that loses strips, every
 * second strip has a zone of its own for its seams ({@code SeamZone}). The best of all plans is taken. Layers of a
 * blank are glued up one by one; seams that lie one above the other in two layers are not looked at.
 *
 * <p><b>What a proof is over.</b> Pieces may have any length, and a program holds only some ({@code PieceLengths}). So
 * a second program is solved beside it ({@code CuttingBound}), in which a length stands for a range. A piece takes no
 * more of a board than the start of its range, and reaches as far as its end. All pieces together are as long as their
 * strips. Every plan satisfies it, so its least is a bound for all of them. A plan that meets its bounds is proved to
 * be the best of every plan. One that is only the best with the lengths that were tried says so.
 *
 * <p><b>The same question has the same answer.</b> Searches run in one thread from a fixed seed and end by work that
 * the solver counts. The clock is the outer limit, and an answer that it ended says so. The last plans are kept, so
 * that a cut list, a shopping list and pictures show one plan ({@code RecentPlans}). A thread that waits for a search
 * may be interrupted, which ends it.
 *
 * <p><b>Why CP-SAT.</b> Measured against ojAlgo 56, on two cores, medians of runs that took turns. Its program held the
 * ways to cut that prices did not rule out. The places of seams were chosen before.
 *
 * <table>
 * <caption>ojAlgo 56 and CP-SAT 9.12</caption>
 * <tr><th></th><th>ojAlgo</th><th>CP-SAT</th></tr>
 * <tr><td>400 small problems: claims refuted where a longer piece serves as a shorter one</td><td>3</td><td>0</td></tr>
 * <tr><td>median of one</td><td>0.9 ms</td><td>1.9 ms</td></tr>
 * <tr><td>three racks of odd boards: strips of 30</td><td>8, 14, 14</td><td>10, 25, 28, all proved</td></tr>
 * <tr><td>12 boards, 1 and 2 seams: cost of 10 racks</td><td>569, 569</td><td>513, 473</td></tr>
 * <tr><td>woods proved of 30</td><td>23, 20 for the places chosen</td><td>26, 26 for every plan</td></tr>
 * <tr><td>3 boards, none, 1 and 2 seams: missing strips</td><td>67, 57, 59</td><td>66, 39, 32</td></tr>
 * <tr><td>times of 12 boards, none, 1 and 2 seams</td><td>1</td><td>2.7, 4.1, 2.0</td></tr>
 * <tr><td>200 boards, 1 seam: woods proved of 9</td><td>6</td><td>5</td></tr>
 * <tr><td>jars</td><td>2.5 MB</td><td>29.6 MB, unpacked 61 MB</td></tr>
 * </table>
 *
 * <p>CP-SAT is slower and heavier. It finds more, no claim of it was refuted, it counts its work, and it stops when
 * told to. ojAlgo recurses without a bound, and passed its time by a factor of eight. The native library is loaded when
 * the first plan is asked for.
 */
package org.orbwright.stock;
