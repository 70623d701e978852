package io.faultwright.key;

import io.faultwright.json.Fields;
import io.faultwright.json.Json;
import io.faultwright.output.Refused;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.interfaces.EdECPublicKey;
import java.security.interfaces.RSAPublicKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Signs JSON as a compact JSON Web Signature, with the algorithms whose signatures follow from what
 * is signed: RS256 and EdDSA with Ed25519. The public key stands in the header.
 *
 * <p>Source: RFC 7515 (JWS), RFC 7517 (JWK), RFC 7518 (RS256), RFC 8037 (Ed25519).
 */
public final class CompactJws {
  private static final List<String> KINDS = List.of("RSA", "Ed25519");
  private static final int LEAST_RSA_BITS = 2048;
  private static final int ED25519_BYTES = 32;
  private static final String HELP =
      "make a pair: `openssl genpkey -algorithm ed25519 -out key.pem`, then"
          + " `openssl pkey -in key.pem -pubout -out public.pem`";

  private final PrivateKey secret;
  private final PublicKey known;

  private CompactJws(PrivateKey secret, PublicKey known) {
    this.secret = secret;
    this.known = known;
  }

  /**
   * A signer with a pair of keys.
   *
   * @param secret PEM with {@code PRIVATE KEY} (PKCS #8)
   * @param known PEM with {@code PUBLIC KEY} (X.509)
   * @throws Refused where they are no such keys, or do not belong together
   */
  public static CompactJws of(String secret, String known) {
    byte[] secretBytes = pem(secret, "PRIVATE KEY");
    byte[] knownBytes = pem(known, "PUBLIC KEY");
    return KINDS.stream()
        .flatMap(kind -> pair(kind, secretBytes, knownBytes).stream())
        .findFirst()
        .orElseThrow(() -> new Refused("the keys are not a pair of RSA or Ed25519 keys", HELP))
        .tried();
  }

  private static byte[] pem(String text, String label) {
    String begin = "-----BEGIN " + label + "-----";
    String end = "-----END " + label + "-----";
    int from = text.indexOf(begin);
    int to = text.indexOf(end);
    if (from < 0 || to < from) {
      throw new Refused(
          "expected a key that begins with `" + begin + "`",
          "turn an older or a locked private key into one with"
              + " `openssl pkcs8 -topk8 -nocrypt -in old.pem -out key.pem`");
    }
    try {
      return Base64.getMimeDecoder().decode(text.substring(from + begin.length(), to));
    } catch (IllegalArgumentException broken) {
      throw new Refused("the key is broken off", HELP);
    }
  }

  private static Optional<CompactJws> pair(String kind, byte[] secret, byte[] known) {
    try {
      KeyFactory factory = KeyFactory.getInstance(kind);
      return Optional.of(
          new CompactJws(
              factory.generatePrivate(new PKCS8EncodedKeySpec(secret)),
              factory.generatePublic(new X509EncodedKeySpec(known))));
    } catch (GeneralSecurityException other) {
      return Optional.empty();
    }
  }

  private CompactJws tried() {
    if (known instanceof RSAPublicKey rsa && rsa.getModulus().bitLength() < LEAST_RSA_BITS) {
      throw new Refused("the RSA key has fewer than " + LEAST_RSA_BITS + " bits", HELP);
    }
    byte[] text = "faultwright".getBytes(StandardCharsets.UTF_8);
    try {
      Signature check = Signature.getInstance(algorithm());
      check.initVerify(known);
      check.update(text);
      if (check.verify(signature(text))) {
        return this;
      }
    } catch (GeneralSecurityException wrong) {
      // said below
    }
    throw new Refused("the private and the public key do not belong together", HELP);
  }

  private String algorithm() {
    return known instanceof RSAPublicKey ? "SHA256withRSA" : "Ed25519";
  }

  /** The text of the signed token. */
  public String sign(Map<String, Object> payload) {
    Fields header =
        new Fields()
            .put("alg", known instanceof RSAPublicKey ? "RS256" : "EdDSA")
            .put("jwk", jwk())
            .put("typ", "JWT");
    String signed = base64(utf8(Json.text(header))) + "." + base64(utf8(Json.text(payload)));
    return signed + "." + base64(signature(utf8(signed)));
  }

  private byte[] signature(byte[] text) {
    try {
      Signature signature = Signature.getInstance(algorithm());
      signature.initSign(secret);
      signature.update(text);
      return signature.sign();
    } catch (GeneralSecurityException wrong) {
      throw new Refused("the private key does not sign: " + wrong.getMessage(), HELP);
    }
  }

  /** The public key alone. */
  private Fields jwk() {
    if (known instanceof RSAPublicKey rsa) {
      return new Fields()
          .put("kty", "RSA")
          .put("n", base64(unsigned(rsa.getModulus())))
          .put("e", base64(unsigned(rsa.getPublicExponent())));
    }
    byte[] encoded = ((EdECPublicKey) known).getEncoded();
    byte[] point = Arrays.copyOfRange(encoded, encoded.length - ED25519_BYTES, encoded.length);
    return new Fields().put("kty", "OKP").put("crv", "Ed25519").put("x", base64(point));
  }

  private static byte[] unsigned(BigInteger number) {
    byte[] bytes = number.toByteArray();
    return bytes[0] == 0 ? Arrays.copyOfRange(bytes, 1, bytes.length) : bytes;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String base64(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }
}
