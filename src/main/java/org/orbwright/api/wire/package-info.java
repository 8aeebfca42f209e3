/**
 * Documents in, answers and problems out. Start with {@link org.orbwright.api.wire.RequestReader} and
 * {@link org.orbwright.api.wire.AnswerJson}. Everything that goes wrong leaves as a
 * {@link org.orbwright.api.wire.Problem}.
 *
 * <p><b>Our own reader.</b> Callers want every broken rule at once, with its pointer and in plain words. Jackson's
 * binding was tried with a handler of its own that collects. A text for a number, a number for a text and a repeated
 * field still end the reading at once. So {@link org.orbwright.api.wire.RecordReader} goes over the streaming parser.
 *
 * <p><b>Answers</b> are written by Jackson ({@link org.orbwright.api.wire.AnswerJson}). It is told how each number is
 * converted and rounded. A writer of our own took two thirds of the time for writing. With that, HTTP gave 5 % more
 * sheets a second.
 *
 * <p><b>Our own problems.</b> They are a typed record, so that the contract's schema is what is sent. An extension for
 * problems was tried, and would have added a second shape.
 *
 * <p><b>Packed bodies are refused.</b> A document is small, and unpacking needs a limit of its own.
 *
 * <p><b>Tables.</b> The cut list, the shopping list and a cutter's way can be had as CSV.
 * {@link org.orbwright.api.wire.TableWriter} makes a column of each component of their rows, with the conversion and
 * rounding of the JSON. A text that a spreadsheet might take for a formula follows an apostrophe
 * ({@link org.orbwright.api.wire.Csv}).
 */
package org.orbwright.api.wire;
