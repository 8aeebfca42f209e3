package org.orbwright.stock;

import java.util.List;

/**
 * What is minimised.
 *
 * @param perBoard what each board of a kind costs
 * @param perSeam what each seam costs
 * @param perMissing what each missing strip of a kind costs
 * @param mayMiss how many strips of each kind may be missing
 */
record CuttingAim(List<Double> perBoard, double perSeam, List<Double> perMissing, List<Integer> mayMiss) {
    CuttingAim {
        perBoard = List.copyOf(perBoard);
        perMissing = List.copyOf(perMissing);
        mayMiss = List.copyOf(mayMiss);
    }
}
