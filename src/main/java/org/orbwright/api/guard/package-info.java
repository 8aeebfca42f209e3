/**
 * Who may come in, how much at once, and what is told to whoever is turned away. Start with
 * {@link org.orbwright.api.guard.AccessGate}.
 *
 * <p><b>Access</b> is checked by a filter of our own and not by the framework's policies. A refusal is to be a problem
 * like every other. And keys come as basic passwords too, which is all that some programs of a shop can send. Tokens
 * are checked by {@code quarkus-oidc}.
 *
 * <p><b>Sizes.</b> The HTTP server's limit of a body is that of a batch. Every other body is held to its own limit by
 * {@link org.orbwright.api.guard.RequestLimits} and by the reader.
 *
 * <p><b>Long work</b> has permits ({@link org.orbwright.api.guard.WorkPermits}). One is taken after the body has been
 * read, and kept until the work stands still. So who asks, leaves and asks again gains nothing. Searches and
 * simulations end by their own bounds. When the caller leaves, {@link org.orbwright.api.guard.CallerWatch} interrupts
 * the thread. Long work that notices throws a {@code CancellationException}. Nothing below
 * {@link org.orbwright.api.guard.Bulkhead} may catch it.
 *
 * <p><b>Answers of many lines</b> wait for their callers most of the time, and have permits of their own, four times as
 * many. They ask between lines whether the caller is still there. They end with the caller, or by cutting the
 * connection. So nobody takes half an answer for a whole.
 *
 * <p><b>Callers that leave</b> are no fault. {@link org.orbwright.api.guard.ProblemMappers} knows them by the broken
 * connection, and answers them without a body.
 *
 * <p><b>What an address takes and answers</b> is read from the resources ({@link org.orbwright.api.guard.Endpoints}).
 * {@link org.orbwright.api.guard.AcceptRanges} spells out ranges of media types, which the framework would refuse.
 *
 * <p><b>Metrics</b> hold no name that a caller makes up ({@link org.orbwright.api.guard.RequestMetrics}). Addresses are
 * patterns of the contract; the rest is {@code OTHER}.
 */
package org.orbwright.api.guard;
