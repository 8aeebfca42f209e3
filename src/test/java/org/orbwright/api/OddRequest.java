package org.orbwright.api;

import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * A request as it is sent.
 *
 * @param method the method, in capitals
 * @param template the path as the contract has it
 * @param address path and query, encoded
 * @param headers the headers, by name
 * @param body the body, none with GET
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared.
record OddRequest(String method, String template, String address, Map<String, String> headers, byte[] body) {
    /** A path that the contract takes for this operation. */
    String anyPath() {
        return template.replaceAll("\\{[^}]*}", "name");
    }

    @Override
    public String toString() {
        return method + " " + address + " " + headers + " " + new String(body, StandardCharsets.UTF_8);
    }
}
