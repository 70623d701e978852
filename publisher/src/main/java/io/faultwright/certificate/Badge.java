package io.faultwright.certificate;

import io.faultwright.certificate.Certificate.Score;
import io.faultwright.certificate.Certificate.Session;
import io.faultwright.handin.Marks;
import io.faultwright.json.Fields;
import io.faultwright.words.Words;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * A certificate as an AchievementCredential of Open Badges 3.0 (1EdTech), which is a Verifiable
 * Credential of the W3C.
 *
 * <p>Source: 1EdTech, "Open Badges Specification 3.0", data model and "JSON Web Token Proof
 * Format", with the contexts of W3C Verifiable Credentials 2.0 and {@code context-3.0.3.json}.
 */
public final class Badge {
  private static final List<String> CONTEXT =
      List.of(
          "https://www.w3.org/ns/credentials/v2",
          "https://purl.imsglobal.org/spec/ob/v3p0/context-3.0.3.json");

  private final Marks marks;
  private final String issuer;
  private final Words say;

  /**
   * @param issuer address that stands for whoever gives the certificates
   */
  public Badge(Marks marks, Optional<String> issuer) {
    this.marks = marks;
    this.issuer =
        issuer.or(() -> marks.about().base()).orElseGet(() -> urn("maker", marks.about().maker()));
    this.say = Words.of(marks.about().language());
  }

  /** Without a signature, and saying so. */
  public Map<String, Object> unsigned(Certificate one) {
    String note =
        say.say(
            "Not signed. Whether it holds, the issuer tells by its number and check value: {0}, {1}.",
            one.number(), one.check());
    return credential(one, Optional.of(note)).map();
  }

  /** What a JSON Web Token holds: the credential and the claims that repeat parts of it. */
  public Map<String, Object> claims(Certificate one) {
    return credential(one, Optional.empty())
        .put("iss", issuer)
        .put("jti", id(one))
        .put("nbf", one.date().atStartOfDay().toEpochSecond(ZoneOffset.UTC))
        .put("sub", subject(one))
        .map();
  }

  private Fields credential(Certificate one, Optional<String> note) {
    return new Fields()
        .put("@context", CONTEXT)
        .put("id", id(one))
        .put("type", List.of("VerifiableCredential", "OpenBadgeCredential"))
        .put("name", one.session().title())
        .putIfAny("description", note)
        .put("issuer", profile())
        .put("validFrom", one.date() + "T00:00:00Z")
        .put("credentialSubject", earner(one));
  }

  private Fields profile() {
    return new Fields()
        .put("id", issuer)
        .put("type", List.of("Profile"))
        .put("name", marks.about().maker())
        .putIfAny("url", marks.about().base());
  }

  private Fields earner(Certificate one) {
    Fields name =
        new Fields()
            .put("type", "IdentityObject")
            .put("hashed", false)
            .put("identityHash", one.name())
            .put("identityType", "name");
    return new Fields()
        .put("id", subject(one))
        .put("type", List.of("AchievementSubject"))
        .put("identifier", List.of(name))
        .put("licenseNumber", one.number())
        .put("achievement", achievement(one))
        .putIfAny("result", one.score().map(this::result).stream().toList());
  }

  private Fields achievement(Certificate one) {
    Session session = one.session();
    String criteria =
        say.say(
            "At least {0} % of {1} items of the quiz are right.", marks.passMark(), marks.items());
    return new Fields()
        .put("id", urn("achievement", session.maker() + "\n" + session.id()))
        .put("type", List.of("Achievement"))
        .put("achievementType", "Certificate")
        .put("name", session.title())
        .put("description", say.say("Has passed the quiz of the session {0}.", session.title()))
        .put("criteria", new Fields().put("narrative", criteria))
        .put("humanCode", session.id())
        .put("inLanguage", marks.about().language())
        .putIfAny("resultDescription", one.score().map(score -> described()).stream().toList());
  }

  private Fields described() {
    return new Fields()
        .put("id", scale())
        .put("type", List.of("ResultDescription"))
        .put("name", say.say("Right answers"))
        .put("resultType", "Percent")
        .put("requiredValue", Integer.toString(marks.passMark()))
        .put("valueMin", "0")
        .put("valueMax", "100");
  }

  private Fields result(Score score) {
    return new Fields()
        .put("type", List.of("Result"))
        .put("resultDescription", scale())
        .put("value", Integer.toString(score.percent()));
  }

  private String scale() {
    return urn("scale", marks.fingerprint());
  }

  private String id(Certificate one) {
    return urn("certificate", one.number() + "\n" + one.check());
  }

  private String subject(Certificate one) {
    return urn("subject", one.number());
  }

  /** The same for the same text (RFC 4122, version 3). */
  private static String urn(String kind, String text) {
    byte[] name = ("faultwright " + kind + "\n" + text).getBytes(StandardCharsets.UTF_8);
    return "urn:uuid:" + UUID.nameUUIDFromBytes(name);
  }
}
