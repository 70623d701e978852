package io.faultwright.model;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is signed beside a knowledge base, and whose keys are known.
 *
 * @param all by what is signed and role
 * @param signers people with a key, by name
 */
public record SignOffs(List<SignOff> all, SortedMap<String, Signer> signers) {
  /** Nothing is signed. */
  public static final SignOffs NONE = new SignOffs(List.of(), new TreeMap<>());

  /** The folder beside the sources in which sign-offs lie. */
  public static final String FOLDER = "sign-offs/";

  /** The file of the keys. */
  public static final String SIGNERS = FOLDER + "signers.yaml";

  public SignOffs {
    all =
        all.stream()
            .sorted(Comparator.comparing(SignOff::of).thenComparing(SignOff::role))
            .toList();
    signers = Sorted.copy(signers);
  }

  /** The file in which a role's sign-off of something lies. */
  public static String path(Signed of, String role) {
    return FOLDER + of.kind().word() + "/" + of.id() + "." + role + ".yaml";
  }

  /** The person of a name, whatever its case and blanks. */
  public Optional<Signer> signer(String name) {
    return signers.values().stream().filter(one -> samePerson(one.name(), name)).findFirst();
  }

  /** Whether two names are the same up to case and blanks. */
  public static boolean samePerson(String one, String other) {
    return plain(one).equals(plain(other));
  }

  private static String plain(String name) {
    return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
