/**
 * What the service promises, as OpenAPI. {@link org.orbwright.api.contract.ContractFilter} completes what is scanned
 * from the resources while the service is built. Start there.
 *
 * <p><b>Schemas</b> are made from the descriptions and bounds that the reader and the writer go by
 * ({@link org.orbwright.api.contract.ContractSchemas}). So none is written twice.
 *
 * <p><b>The committed contract</b> is what a built service hands out ({@link org.orbwright.api.contract.ContractPage}).
 * The framework would make it anew at every start.
 */
package org.orbwright.api.contract;
