/**
 * The service's face: the only package that knows HTTP, JSON and OpenAPI. Nothing is computed here. Start with
 * {@link org.orbwright.api.SheetResource}.
 *
 * <p>Requests come in through {@link org.orbwright.api.RequestReader}. Resources hand them to the calculators in three
 * lines. Answers go out through {@link org.orbwright.api.AnswerWriter}. Everything that goes wrong leaves as a
 * {@link org.orbwright.api.Problem}. {@link org.orbwright.api.ContractFilter} writes down what is promised.
 *
 * <h2>Reading and writing</h2>
 *
 * <p><b>Our own reader.</b> Callers want every broken rule at once, with its pointer and in plain words. A general
 * binder stops at the first. So {@link org.orbwright.api.RecordReader} goes over the JSON streaming parser.
 *
 * <p><b>Our own writer.</b> A sheet is some 600 numbers that are converted and rounded once. Writing their digits
 * straight into bytes ({@link org.orbwright.api.JsonBytes}) costs a third of a general generator.
 *
 * <p><b>Our own problems.</b> They are a typed record, so that the contract's schema is what is sent. An extension for
 * problems was tried, and would have added a second shape.
 *
 * <p><b>Packed bodies are refused.</b> A document is small, and unpacking needs a limit of its own.
 *
 * <p><b>Tables.</b> The cut list, the shopping list and a cutter's way can be had as CSV.
 * {@link org.orbwright.api.TableWriter} makes a column of each component of their rows, with the conversion and
 * rounding of the JSON. A text that a spreadsheet might take for a formula follows an apostrophe
 * ({@link org.orbwright.api.Csv}).
 *
 * <p><b>Batches</b> are read line by line while answers are written, on one thread. The caller's pace is the pace of
 * the work. The HTTP server's limit of a body is that of a batch. Every other body is held to its own limit by
 * {@link org.orbwright.api.RequestLimits} and {@link org.orbwright.api.RequestReader}.
 *
 * <p><b>Files</b> are named in one place, {@link org.orbwright.api.FileNames}, whatever makes them.
 *
 * <h2>Queries and forms</h2>
 *
 * <p><b>No query parameter is passed over.</b> A misspelt one would be a silent default.
 * {@link org.orbwright.api.DeclaredQuery} refuses those that an address does not declare, and those that are stated
 * twice. {@link org.orbwright.api.CellQuery} does it for the two methods that read their query themselves. The
 * framework would end their parameters at a semicolon, and semicolons separate bands.
 *
 * <p><b>What means nothing beside the rest</b> is refused where it is read ({@link org.orbwright.api.Query}). Examples
 * are {@code width} without PNG, {@code set} of the full solid, and {@code deviation} of a pocket with sides.
 *
 * <p><b>{@code format} goes before Accept</b>, since many shop tools cannot set a header.
 * {@link org.orbwright.api.AcceptRanges} takes the header away, which the framework would refuse first.
 *
 * <p><b>A body without parts</b> has numbers and a STOP, but no file: 422 with the finding's code. That is a sphere
 * that lies wholly inside the hollow.
 *
 * <h2>Callers and load</h2>
 *
 * <p><b>Access</b> is checked by a filter of our own ({@link org.orbwright.api.AccessGate}) and not by the framework's
 * policies. A refusal is to be a problem like every other. And keys come as basic passwords too, which is all that some
 * programs of a shop can send. Tokens are checked by {@code quarkus-oidc}.
 *
 * <p><b>Long work</b> has places ({@link org.orbwright.api.HeavyPlaces}). A place is taken after the body has been
 * read, and kept until the work stands still. So who asks, leaves and asks again gains nothing. Searches and
 * simulations end by their own bounds. When the caller leaves, {@link org.orbwright.api.CallerWatch} interrupts the
 * thread. Long work that notices throws a {@code CancellationException}. Nothing below
 * {@link org.orbwright.api.Bulkhead} may catch it.
 *
 * <p><b>Answers of many lines</b> wait for their callers most of the time, and have places of their own, four times as
 * many. They ask between lines whether the caller is still there. They end with the caller, or by cutting the
 * connection. So nobody takes half an answer for a whole.
 *
 * <p><b>Callers that leave</b> are no fault. {@link org.orbwright.api.ProblemMappers} knows them by the broken
 * connection, and answers them without a body.
 *
 * <p><b>Metrics</b> hold no name that a caller makes up ({@link org.orbwright.api.Meters}). Addresses are patterns of
 * the contract; the rest is {@code OTHER}.
 *
 * <p><b>{@code batch} on the command line</b> is {@link org.orbwright.api.Batch} without HTTP, for shards of sweeps
 * that are too large for one machine. {@link org.orbwright.api.BatchCommand} says what its exit codes mean. Standard
 * input is tested on the image, since Quarkus puts its own in place of it in tests.
 */
package org.orbwright.api;
