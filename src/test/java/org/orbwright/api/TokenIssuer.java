package org.orbwright.api;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.interfaces.RSAPublicKey;
import java.time.Instant;
import java.util.Base64;

/** A provider of OpenID Connect as far as a service needs one: its configuration and its keys (RFC 8414, RFC 7517). */
final class TokenIssuer {
    private static final Base64.Encoder BASE64 = Base64.getUrlEncoder().withoutPadding();

    private final KeyPair keys = pair();
    private final HttpServer server;

    TokenIssuer() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        answer(
                "/.well-known/openid-configuration",
                "{\"issuer\":\"" + address() + "\",\"jwks_uri\":\"" + address() + "/keys\",\"token_endpoint\":\""
                        + address() + "/token\"}");
        RSAPublicKey key = (RSAPublicKey) keys.getPublic();
        answer(
                "/keys",
                "{\"keys\":[{\"kty\":\"RSA\",\"kid\":\"one\",\"use\":\"sig\",\"alg\":\"RS256\",\"n\":\""
                        + unsigned(key.getModulus()) + "\",\"e\":\"" + unsigned(key.getPublicExponent()) + "\"}]}");
        server.start();
    }

    String address() {
        return "http://localhost:" + server.getAddress().getPort();
    }

    /** A token that ends so many seconds from now, signed by the issuer's key. */
    String token(int seconds) {
        return token(seconds, keys.getPrivate());
    }

    /** A token that looks like the issuer's, but is signed by somebody else. */
    String forged() {
        return token(600, pair().getPrivate());
    }

    private String token(int seconds, PrivateKey key) {
        long now = Instant.now().getEpochSecond();
        String content = encoded("{\"alg\":\"RS256\",\"kid\":\"one\",\"typ\":\"JWT\"}") + "."
                + encoded("{\"iss\":\"" + address() + "\",\"sub\":\"bench\",\"iat\":" + (now - 3600) + ",\"exp\":"
                        + (now + seconds) + "}");
        try {
            Signature signature = Signature.getInstance("SHA256withRSA");
            signature.initSign(key);
            signature.update(content.getBytes(StandardCharsets.US_ASCII));
            return content + "." + BASE64.encodeToString(signature.sign());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private void answer(String path, String json) {
        byte[] body = json.getBytes(StandardCharsets.UTF_8);
        server.createContext(path, exchange -> {
            exchange.getResponseHeaders().add("Content-Type", "application/json");
            exchange.sendResponseHeaders(200, body.length);
            exchange.getResponseBody().write(body);
            exchange.close();
        });
    }

    private static KeyPair pair() {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
            generator.initialize(2048);
            return generator.generateKeyPair();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String encoded(String json) {
        return BASE64.encodeToString(json.getBytes(StandardCharsets.UTF_8));
    }

    private static String unsigned(BigInteger number) {
        byte[] bytes = number.toByteArray();
        int sign = bytes[0] == 0 ? 1 : 0;
        return BASE64.encodeToString(java.util.Arrays.copyOfRange(bytes, sign, bytes.length));
    }
}
