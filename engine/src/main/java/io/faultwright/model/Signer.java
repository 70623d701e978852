package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;

/**
 * A person with a key. Whoever has one must sign with it.
 *
 * @param name as sign-offs say it
 * @param place where it stands
 * @param ssh public keys, each a line as in a file {@code *.pub}
 * @param gpg public keys, each in its armour
 */
public record Signer(String name, Place place, List<String> ssh, List<String> gpg) {
  public Signer {
    ssh = List.copyOf(ssh);
    gpg = List.copyOf(gpg);
  }

  /** The keys that can have made a signature of this format. */
  public List<String> keys(KeySignature.Format format) {
    return format == KeySignature.Format.SSH ? ssh : gpg;
  }
}
