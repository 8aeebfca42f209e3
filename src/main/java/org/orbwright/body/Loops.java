package org.orbwright.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Closed loops of corners' numbers. */
final class Loops {
    private Loops() {}

    /** The loop without parts that run to and fro; empty if nothing else is left. */
    static List<Integer> withoutSpurs(List<Integer> loop) {
        List<Integer> open = new ArrayList<>();
        for (int corner : loop) {
            push(open, corner);
        }
        int start = 0;
        int end = open.size() - 1;
        while (end - start >= 1) {
            if (open.get(start).equals(open.get(end))) {
                end--;
            } else if (end - start >= 2 && open.get(start + 1).equals(open.get(end))) {
                start++;
            } else if (end - start >= 2 && open.get(start).equals(open.get(end - 1))) {
                end--;
            } else {
                break;
            }
        }
        return end - start >= 2 ? List.copyOf(open.subList(start, end + 1)) : List.of();
    }

    private static void push(List<Integer> open, int corner) {
        int last = open.size() - 1;
        if (last >= 0 && open.get(last) == corner) {
            return;
        }
        if (last >= 1 && open.get(last - 1) == corner) {
            open.remove(last);
            return;
        }
        open.add(corner);
    }

    /** Whether a loop runs against its canonical direction. */
    static boolean isTurned(List<Integer> loop) {
        int start = loop.indexOf(Collections.min(loop));
        int size = loop.size();
        return loop.get((start + 1) % size) > loop.get((start + size - 1) % size);
    }

    /** The same loop from its smallest number towards the smaller neighbour, the same for both directions. */
    static List<Integer> canonical(List<Integer> loop) {
        int start = loop.indexOf(Collections.min(loop));
        int size = loop.size();
        int step = isTurned(loop) ? size - 1 : 1;
        List<Integer> canonical = new ArrayList<>(size);
        for (int i = 0, at = start; i < size; i++, at = (at + step) % size) {
            canonical.add(loop.get(at));
        }
        return List.copyOf(canonical);
    }

    static List<Integer> reversed(List<Integer> loop) {
        List<Integer> reversed = new ArrayList<>(loop);
        Collections.reverse(reversed);
        return reversed;
    }
}
