package io.faultwright.render.pdf;

import io.faultwright.layout.QrSymbol;
import java.util.List;

/**
 * What a certificate says, from top to bottom.
 *
 * @param language BCP 47 tag
 * @param date ISO 8601 date that the file says it was made on
 * @param issuer who gives it
 * @param title what it is
 * @param name of the person
 * @param passed the words between name and session
 * @param session what was taught
 * @param facts further lines
 * @param signature what stands below the line to sign on
 * @param proof lines beside the code
 * @param code for cameras
 * @param codeWords what the code says, for those who do not see it
 */
public record CertificateSheet(
    String language,
    String date,
    String issuer,
    String title,
    String name,
    String passed,
    String session,
    List<String> facts,
    String signature,
    List<String> proof,
    QrSymbol code,
    String codeWords) {
  public CertificateSheet {
    facts = List.copyOf(facts);
    proof = List.copyOf(proof);
  }
}
