/**
 * The resources: each receives a document, calls a calculator, and answers. Only this package and its rooms know HTTP,
 * JSON and OpenAPI. Nothing is computed here. Start with {@link org.orbwright.api.SheetResource}.
 *
 * <p>The rooms, from the ground up: {@link org.orbwright.api.wire} reads and writes, {@link org.orbwright.api.query}
 * reads what stands behind the question mark, {@link org.orbwright.api.cells} answers spreadsheets,
 * {@link org.orbwright.api.guard} lets in and keeps order. Upon them stand the resources, upon these
 * {@link org.orbwright.api.contract}, which says what they promise, and {@link org.orbwright.api.command}, which does
 * their work without HTTP. A room knows only what lies below it.
 *
 * <p><b>A new answer</b> needs its capability and one resource. The contract, the header {@code Allow}, metrics and
 * caches follow from the resource's annotations.
 *
 * <p><b>Batches</b> are read line by line while answers are written, on one thread. The caller's pace is the pace of
 * the work.
 *
 * <p><b>Files</b> are named in one place, {@link org.orbwright.api.FileNames}, whatever makes them.
 *
 * <p><b>A body without parts</b> has numbers and a STOP, but no file: 422 with the finding's code. That is a sphere
 * that lies wholly inside the hollow.
 */
package org.orbwright.api;
