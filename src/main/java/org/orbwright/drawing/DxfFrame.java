package org.orbwright.drawing;

import java.util.Map;
import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Layer;

/**
 * What stands around the entities of a drawing interchange file: tables, blocks and objects. Release 2000 has to have
 * them all (ezdxf, "DXF File Structure", section "Minimal DXF Content"); release 12 has tables of lines, layers and
 * letters.
 */
final class DxfFrame {
    private static final String NOBODY = "0";
    private static final String MODEL = "*Model_Space";
    private static final String PAPER = "*Paper_Space";
    private static final String LINE = "CONTINUOUS";
    private static final String LETTERS = "STANDARD";
    /** Black on light ground and white on dark. */
    private static final int PLAIN = 7;
    /** What a program shows first is larger than the outlines by this. */
    private static final double ROOM = 1.1;

    private final DxfPairs pairs;
    private final boolean modern;
    private String modelSpace = "";
    private String paperSpace = "";

    DxfFrame(DxfPairs pairs, DxfRelease release) {
        this.pairs = pairs;
        this.modern = release != DxfRelease.R12;
    }

    /** What goes before the entities. */
    void open(Map<Layer, String> layers, OutlineExtent extent) {
        if (modern) {
            pairs.section("CLASSES");
            end();
        }
        pairs.section("TABLES");
        if (modern) {
            view(extent);
        }
        lines();
        layers(layers);
        letters();
        if (modern) {
            emptyTable("VIEW");
            emptyTable("UCS");
            application();
            dimensions();
            spaces();
        }
        end();
        pairs.section("BLOCKS");
        if (modern) {
            block(MODEL, modelSpace);
            block(PAPER, paperSpace);
        }
        end();
    }

    /** What goes after the entities: the root of all objects with its one entry. */
    void close() {
        if (!modern) {
            return;
        }
        pairs.section("OBJECTS");
        pairs.put(0, "DICTIONARY");
        String root = pairs.handle(5, NOBODY);
        String groups = pairs.next();
        pairs.put(100, "AcDbDictionary");
        pairs.put(3, "ACAD_GROUP");
        pairs.put(350, groups);
        pairs.put(0, "DICTIONARY");
        pairs.put(5, groups);
        pairs.put(330, root);
        pairs.put(100, "AcDbDictionary");
        end();
    }

    /** The handle of what the entities belong to. */
    String modelSpace() {
        return modelSpace;
    }

    private void end() {
        pairs.put(0, "ENDSEC");
    }

    private String table(String name, int entries) {
        pairs.put(0, "TABLE");
        pairs.put(2, name);
        String handle = pairs.handle(5, NOBODY);
        pairs.modern(100, "AcDbSymbolTable");
        pairs.put(70, entries);
        return handle;
    }

    private void endTable() {
        pairs.put(0, "ENDTAB");
    }

    private void emptyTable(String name) {
        table(name, 0);
        endTable();
    }

    private String entry(String table, String owner, String kind, String name) {
        pairs.put(0, table);
        String handle = pairs.handle(table.equals("DIMSTYLE") ? 105 : 5, owner);
        pairs.modern(100, "AcDbSymbolTableRecord");
        pairs.modern(100, kind);
        pairs.put(2, name);
        return handle;
    }

    private void view(OutlineExtent extent) {
        entry("VPORT", table("VPORT", 1), "AcDbViewportTableRecord", "*Active");
        pairs.put(70, 0);
        plain(10, 0);
        plain(11, 1);
        pairs.point(12, new At((extent.left() + extent.right()) / 2, (extent.low() + extent.high()) / 2));
        plain(16, 0);
        pairs.put(36, 1);
        pairs.length(40, ROOM * Math.max(extent.width(), extent.height()));
        pairs.put(41, 1);
        endTable();
    }

    private void plain(int code, int value) {
        pairs.put(code, value);
        pairs.put(code + 10, value);
    }

    private void lines() {
        String table = table("LTYPE", modern ? 3 : 1);
        if (modern) {
            line(table, "ByBlock", "");
            line(table, "ByLayer", "");
        }
        line(table, LINE, "Solid line");
        endTable();
    }

    private void line(String table, String name, String description) {
        entry("LTYPE", table, "AcDbLinetypeTableRecord", name);
        pairs.put(70, 0);
        pairs.put(3, description);
        pairs.put(72, 65);
        pairs.put(73, 0);
        pairs.put(40, 0);
    }

    private void layers(Map<Layer, String> layers) {
        String table = table("LAYER", layers.size() + 1);
        layer(table, "0", PLAIN);
        layers.forEach((layer, name) -> layer(table, name, layer.colour()));
        endTable();
    }

    private void layer(String table, String name, int colour) {
        entry("LAYER", table, "AcDbLayerTableRecord", name);
        pairs.put(70, 0);
        pairs.put(62, colour);
        pairs.put(6, LINE);
    }

    private void letters() {
        entry("STYLE", table("STYLE", 1), "AcDbTextStyleTableRecord", LETTERS);
        pairs.put(70, 0);
        pairs.put(40, 0);
        pairs.put(41, 1);
        pairs.put(50, 0);
        pairs.put(71, 0);
        pairs.put(42, 1);
        pairs.put(3, "txt");
        pairs.put(4, "");
        endTable();
    }

    private void application() {
        entry("APPID", table("APPID", 1), "AcDbRegAppTableRecord", "ACAD");
        pairs.put(70, 0);
        endTable();
    }

    private void dimensions() {
        String table = table("DIMSTYLE", 1);
        pairs.put(100, "AcDbDimStyleTable");
        entry("DIMSTYLE", table, "AcDbDimStyleTableRecord", LETTERS);
        pairs.put(70, 0);
        endTable();
    }

    private void spaces() {
        String table = table("BLOCK_RECORD", 2);
        modelSpace = entry("BLOCK_RECORD", table, "AcDbBlockTableRecord", MODEL);
        paperSpace = entry("BLOCK_RECORD", table, "AcDbBlockTableRecord", PAPER);
        endTable();
    }

    private void block(String name, String owner) {
        pairs.put(0, "BLOCK");
        pairs.handle(5, owner);
        pairs.put(100, "AcDbEntity");
        pairs.put(8, "0");
        pairs.put(100, "AcDbBlockBegin");
        pairs.put(2, name);
        pairs.put(70, 0);
        pairs.point(new At(0, 0));
        pairs.put(3, name);
        pairs.put(1, "");
        pairs.put(0, "ENDBLK");
        pairs.handle(5, owner);
        pairs.put(100, "AcDbEntity");
        pairs.put(8, "0");
        pairs.put(100, "AcDbBlockEnd");
    }
}
