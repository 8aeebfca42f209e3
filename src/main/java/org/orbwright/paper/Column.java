package org.orbwright.paper;

import java.io.IOException;
import java.util.List;

/** Blocks one below the other. */
record Column(List<Block> blocks) {

    /** Copies the list. */
    Column {
        blocks = List.copyOf(blocks);
    }

    private boolean hasHead(int at) {
        Block head = blocks.get(at).head();
        return head != null && (at == 0 || !head.equals(blocks.get(at - 1).head()));
    }

    private double height(int at) {
        Block block = blocks.get(at);
        return block.height() + (hasHead(at) ? block.head().height() : 0);
    }

    /** Height of all of it, heads included. */
    double height() {
        double height = 0;
        for (int i = 0; i < blocks.size(); i++) {
            height += height(i);
        }
        return height;
    }

    /** The first so many blocks. */
    Column first(int count) {
        return new Column(blocks.subList(0, count));
    }

    /** All but the first so many blocks. */
    Column without(int count) {
        return new Column(blocks.subList(count, blocks.size()));
    }

    /** How many blocks from the first on fit into a height, leaving none that leads at the end; 0 if that is none. */
    int fitting(double height) {
        int count = 0;
        double sum = 0;
        while (count < blocks.size() && sum + height(count) <= height) {
            sum += height(count);
            count++;
        }
        while (count > 0 && count < blocks.size() && blocks.get(count - 1).leads()) {
            count--;
        }
        return count;
    }

    /** How many blocks stand in the first of two columns that are as low as they can be. */
    int half() {
        int best = blocks.size();
        double least = height();
        for (int count = 1; count < blocks.size(); count++) {
            double higher = Math.max(first(count).height(), without(count).height());
            if (!blocks.get(count - 1).leads() && higher < least) {
                least = higher;
                best = count;
            }
        }
        return best;
    }

    /** Draws it below and to the right of a point. */
    void draw(PdfCanvas canvas, double left, double top) throws IOException {
        double y = top;
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            if (hasHead(i)) {
                block.head().ink().draw(canvas, left, y);
                y += block.head().height();
            }
            block.ink().draw(canvas, left, y);
            y += block.height();
        }
    }
}
