package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A person's word that something is right.
 *
 * @param place where it stands
 * @param of what is signed
 * @param role in which the person signs
 * @param name of the person
 * @param date given by the person, ISO 8601
 * @param author who wrote what is signed, where that is said
 * @param note what else the person says
 * @param meaning SHA-256 of what was signed, in hexadecimal digits
 * @param parts what it consisted of, each with the first digits of its own SHA-256; tells what
 *     changed since
 * @param proof a signature with the person's own key
 */
public record SignOff(
    Place place,
    Signed of,
    String role,
    String name,
    String date,
    Optional<String> author,
    String note,
    String meaning,
    SortedMap<String, String> parts,
    Optional<KeySignature> proof) {
  public SignOff {
    parts = Sorted.copy(parts);
  }

  /** The same with a signature. */
  public SignOff with(KeySignature signature) {
    return new SignOff(
        place, of, role, name, date, author, note, meaning, parts, Optional.of(signature));
  }
}
