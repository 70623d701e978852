package io.faultwright.certificate;

import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.List;

/** What is printed on a certificate, in the language of the handbook. */
public final class CertificateWords {
  private final Words say;

  /**
   * @param language BCP 47 tag
   */
  public CertificateWords(String language) {
    this.say = Words.of(language);
  }

  public String title() {
    return say.say("Certificate");
  }

  public String issuer(Certificate one) {
    return one.session().maker() + " · " + one.session().handbook();
  }

  public String passed() {
    return say.say("has passed the quiz of the session");
  }

  /** When, and how well. */
  public List<String> facts(Certificate one) {
    List<String> facts = new ArrayList<>();
    facts.add(say.say("held on {0}", one.date()));
    one.score()
        .map(
            score ->
                say.say(
                    "{0} of {1} items right, {2} %", score.right(), score.of(), score.percent()))
        .ifPresent(facts::add);
    return facts;
  }

  public String signature() {
    return say.say("Signature of the trainer");
  }

  /** What is typed to look it up. */
  public List<String> proof(Certificate one) {
    return List.of(
        say.say("Number: {0}", one.number()), say.say("Check value: {0}", one.spacedCheck()));
  }

  /** What the code says. */
  public String code(Certificate one) {
    return say.say("Certificate {0}, check value {1}", one.number(), one.check());
  }

  /** What the code is, for those who do not see it. */
  public String codeWords(Certificate one) {
    return say.say("QR code: {0}", code(one));
  }
}
