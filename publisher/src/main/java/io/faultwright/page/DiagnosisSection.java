package io.faultwright.page;

import java.util.List;

/**
 * The page that leads from check to check, by a script.
 *
 * @param complaints the list of complaints, for those whose device runs no scripts
 */
public record DiagnosisSection(Link complaints) implements Content {
  @Override
  public List<String> scripts() {
    return List.of(SitePaths.DIAGNOSIS_SCRIPT);
  }
}
