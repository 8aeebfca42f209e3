package org.orbwright.segment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.segment.Yield.SpeciesYield;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.segment.Yield.StripYield;
import org.orbwright.wood.Woods;

/** Adds up strips and finished wood by species. */
final class SpeciesTotals {
    private Integer strips = 0;
    private Double length = 0.0;
    private Double volume = 0.0;
    private Double finished = 0.0;

    private SpeciesTotals() {}

    static List<SpeciesYield> of(List<LaminationYield> laminations, List<SphereYield> spheres, Woods woods) {
        Map<String, SpeciesTotals> totals = new LinkedHashMap<>();
        for (LaminationYield lamination : laminations) {
            for (StripYield strip : lamination.strips()) {
                totals.computeIfAbsent(strip.species(), name -> new SpeciesTotals())
                        .add(strip);
            }
        }
        for (SphereYield sphere : spheres) {
            for (SpeciesInSphere wood : sphere.species()) {
                SpeciesTotals total = totals.get(wood.species());
                Double each = wood.sphereVolume();
                total.finished = Sums.add(total.finished, each == null ? null : each * sphere.count());
            }
        }
        return totals.entrySet().stream()
                .map(entry -> entry.getValue().of(entry.getKey(), woods))
                .toList();
    }

    private void add(StripYield strip) {
        Integer count = strip.count();
        boolean known = strips != null && count != null;
        strips = known ? Integer.valueOf(strips + count) : null;
        length = known ? Double.valueOf(length + strip.length() * count) : null;
        volume = known ? Double.valueOf(volume + strip.width() * strip.thickness() * strip.length() * count) : null;
    }

    private SpeciesYield of(String species, Woods woods) {
        return new SpeciesYield(
                species,
                strips,
                length,
                volume,
                volume,
                volume,
                finished,
                Sums.density(woods, species),
                Sums.mass(woods, species, volume),
                Sums.mass(woods, species, finished));
    }
}
