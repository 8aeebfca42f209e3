/**
 * What goes to the bench on paper. Start with {@link org.orbwright.paper.ShopSheetCalculator}, which puts the answers
 * of the capabilities into the order of the work. {@link org.orbwright.paper.PdfWriter},
 * {@link org.orbwright.paper.HtmlWriter} and, for a terminal, {@link org.orbwright.paper.TextWriter} write them.
 *
 * <p><b>Paper holds what is written, not what is calculated.</b> It asks {@code SheetCalculator.build}, and
 * {@link org.orbwright.paper.SetUp} rounds and words it. So PDF and HTML cannot differ. The HTML is well-formed XML
 * too, and the tests read it as that.
 *
 * <p><b>The same request has the same bytes.</b> A PDF has no date, and its identifier is not made from the time of
 * day.
 *
 * <p><b>Letters.</b> PDFBox draws with the one font that it ships ({@link org.orbwright.paper.PdfLetters}). Bold
 * letters are filled and stroked.
 *
 * <p><b>Drawings stay lines.</b> {@link org.orbwright.paper.PdfDrawing} maps the same marks as {@code SvgWriter}, and
 * hatches are tiling patterns.
 *
 * <p><b>Templates</b> are drawings at true size ({@code TemplateDrawing}). {@link org.orbwright.paper.Tiling} parts
 * them with an overlap of 10 mm. A cross is drawn from its place on the template, so that it lies on both pages.
 * {@link org.orbwright.paper.Plates} puts the tiles onto pages. A template of more than 24 tiles is left out in words,
 * and what would make more than 100 of all. The sheet itself is never refused for its size.
 *
 * <p><b>Pages</b> are cards of blocks in two columns ({@link org.orbwright.paper.PdfFlow},
 * {@link org.orbwright.paper.Column}, {@link org.orbwright.paper.Block}). A table or picture that would be too small in
 * one column takes both. A caution stays with what follows, and a box to tick with what goes before. A card stays on
 * one page where it can.
 *
 * <p><b>A STOP stands in the foot of every page</b>, since templates leave the sheet.
 */
package org.orbwright.paper;
