package org.orbwright.diagnosis;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe(
        "What the trials of one setting say, and where to set it next on the scale that they were set on. Errors are in"
                + " degrees for an angle and in the design's unit for a length; above 0 the setting goes too far. Intervals hold"
                + " the truth with 95 % (JCGM 101:2008).")
public record DialIn(
        @Describe(value = "What is dialled in.", example = "\"TIP_ANGLE\"")
        DialSetting setting,

        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(value = "What to do.", example = "\"SET_NEXT\"")
        Advice advice,

        @Describe(
                value = "What the scale should stand at now: the best setting, or the last one where it is to stay.",
                quantity = Quantity.PLAIN,
                example = "60.002599",
                min = -1e18)
        double next,

        @Describe(value = "Standard uncertainty of the best setting.", quantity = Quantity.PLAIN, example = "0.00718")
        double uncertainty,

        @Describe(
                value = "The least that the best setting can be.",
                quantity = Quantity.PLAIN,
                example = "59.990176",
                min = -1e18)
        double least,

        @Describe(value = "The most.", quantity = Quantity.PLAIN, example = "60.018237", min = -1e18)
        double most,

        @Describe(
                value = "How far the setting moves for one step of the scale, as the trials and what was stated tell.",
                quantity = Quantity.PLAIN,
                example = "0.964963",
                min = -1e18)
        double perUnit,

        @Describe(value = "Standard uncertainty of that.", quantity = Quantity.PLAIN, example = "0.078078")
        double perUnitUncertainty,

        @Describe("How far the last trial was off.") ErrorRange last,

        @Describe(
                value =
                        "The widest gap that the last trial's setting leaves. Left out for a setting that makes no gap.",
                quantity = Quantity.LENGTH,
                example = "0.375",
                optional = true)
        Double gapNow,

        @Describe(
                value = "The gap that the next setting keeps within, in 95 of 100 saws like this.",
                quantity = Quantity.LENGTH,
                example = "0.1363",
                optional = true)
        Double gapNext,

        @Describe(
                value =
                        "Trials that are still to come, in 95 of 100 saws like this. It is 0 where the setting is to stay."
                                + " Left out where the reading is too coarse, or the saw repeats too badly, to get there.",
                example = "3",
                max = 20,
                optional = true)
        Integer trialsLeft,

        @Describe("The trials, in the order of the request.")
        List<DialTrial> trials,

        @Describe(
                value =
                        "What a line through the trials alone gives for perUnit, where that contradicts what was stated.",
                quantity = Quantity.PLAIN,
                example = "-1",
                min = -1e18,
                optional = true)
        Double perUnitOfTrials,

        @Describe("Readings that tell this setting, the one that is worth most first.")
        List<DialReading> readings) {

    public DialIn {
        trials = List.copyOf(trials);
        readings = List.copyOf(readings);
    }

    @Describe(
            "What to do. SET_NEXT: set it as answered, and make another trial. LEAVE: stop here. The glue bridges what is"
                    + " left, or the reading cannot tell a length that is off from one that is right. MEASURE_FINER:"
                    + " leave the setting, and read it more finely. The reading cannot tell the error from none, and"
                    + " the glue may not bridge it. MEASURE_AGAIN: leave the setting. The last trial contradicts those"
                    + " before.")
    public enum Advice {
        SET_NEXT,
        LEAVE,
        MEASURE_FINER,
        MEASURE_AGAIN
    }

    @Describe("How far a setting is off, as an interval.")
    public record ErrorRange(
            @Describe(value = "The least.", quantity = Quantity.PLAIN, example = "-0.04551", min = -1e18)
            double least,

            @Describe(value = "The most.", quantity = Quantity.PLAIN, example = "-0.039442", min = -1e18)
            double most) {

        double farthest() {
            return Math.max(Math.abs(least), Math.abs(most));
        }

        boolean holdsNone() {
            return least <= 0 && most >= 0;
        }
    }

    @Describe("What one trial says.")
    public record DialTrial(
            @Describe(value = "Its number, from 1.", example = "1", min = 1, max = 30)
            int trial,

            @Describe(
                    value = "How far the setting was off by its reading.",
                    quantity = Quantity.PLAIN,
                    example = "-0.097089",
                    min = -1e18)
            double error,

            @Describe(value = "Standard uncertainty of the reading.", quantity = Quantity.PLAIN, example = "0.001752")
            double uncertainty,

            @Describe(value = "What the other trials foretell for it. Left out for a single trial.", optional = true)
            ErrorRange foretold,

            @Describe(
                    value = "Whether it contradicts the others. Then it does not count. Of two that contradict each"
                            + " other the later one counts.",
                    example = "false")
            boolean contradicts) {}

    @Describe("A reading that tells a setting, and what it is worth.")
    public record DialReading(
            @Describe(value = "GAP of a test piece, or READING of the thing itself.", example = "\"GAP\"")
            ReadBy by,

            @Describe(
                    value = "Its step, as in the last trial that has one, or as is usual.",
                    quantity = Quantity.PLAIN,
                    example = "0.05")
            double resolution,

            @Describe(
                    value = "Standard uncertainty of the setting by one such reading.",
                    quantity = Quantity.PLAIN,
                    example = "0.001752")
            double uncertainty,

            @Describe(
                    value = "The coarsest step that tells whether the glue bridges what is left. Left out for a setting"
                            + " that makes no gap.",
                    quantity = Quantity.PLAIN,
                    example = "0.2",
                    optional = true)
            Double coarsest) {}

    @Describe("What is read: the GAP of a test piece, or a READING of the angle or the length itself.")
    public enum ReadBy {
        GAP,
        READING
    }
}
