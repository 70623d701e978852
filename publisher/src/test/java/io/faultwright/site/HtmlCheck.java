package io.faultwright.site;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import nu.validator.client.EmbeddedValidator;
import org.xml.sax.SAXException;

/** What the W3C's checker says against a page. */
public final class HtmlCheck {
  /** The checker does not know that {@code 'self'} is the folder; the browser test does. */
  private static final Pattern SELF =
      Pattern.compile(
          "Resource violates Content Security Policy \\(meta tag\\): external (stylesheet|script).*",
          Pattern.DOTALL);

  private HtmlCheck() {}

  /** Every error in it. */
  public static List<String> errors(Path page) throws IOException, SAXException {
    EmbeddedValidator validator = new EmbeddedValidator();
    validator.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
    String report = validator.validate(page);
    List<String> errors = new ArrayList<>();
    for (JsonNode message : new ObjectMapper().readTree(report).get("messages")) {
      errors.add(message.get("message").asText() + " near " + message.path("extract").asText());
    }
    errors.removeIf(error -> SELF.matcher(error).matches());
    return errors;
  }
}
