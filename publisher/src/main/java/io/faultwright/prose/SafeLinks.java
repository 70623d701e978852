package io.faultwright.prose;

import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.html.LinkResolver;
import com.vladsch.flexmark.html.renderer.LinkResolverBasicContext;
import com.vladsch.flexmark.html.renderer.LinkStatus;
import com.vladsch.flexmark.html.renderer.ResolvedLink;
import com.vladsch.flexmark.util.ast.Node;
import io.faultwright.prose.Prose.Dangling;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lets through web and mail addresses and pages of the handbook; notes everything else. */
final class SafeLinks implements LinkResolver {
  private static final Set<String> OUTSIDE = Set.of("http", "https", "mailto");
  private static final Pattern SCHEME = Pattern.compile("([A-Za-z][A-Za-z0-9+.-]*):(.*)");
  private static final Pattern GUIDE_FILE = Pattern.compile("(?:[\\w.-]+/)*([\\w-]+)\\.md");

  private final Destinations destinations;
  private final Set<String> headings;
  private final String prefix;
  private final List<Dangling> dangling = new ArrayList<>();

  /**
   * @param headings ids that links of the form {@code #id} may name, without the prefix
   * @param prefix stands before the ids of headings
   */
  SafeLinks(Destinations destinations, Set<String> headings, String prefix) {
    this.destinations = destinations;
    this.headings = headings;
    this.prefix = prefix;
  }

  List<Dangling> dangling() {
    return dangling;
  }

  @Override
  public ResolvedLink resolveLink(
      Node node, LinkResolverBasicContext context, ResolvedLink written) {
    if (node instanceof MailLink) {
      return written.withStatus(LinkStatus.VALID);
    }
    return address(written.getUrl())
        .map(href -> written.withStatus(LinkStatus.VALID).withUrl(href))
        .orElseGet(() -> lost(node, written));
  }

  private ResolvedLink lost(Node node, ResolvedLink written) {
    note(node, written.getUrl());
    return written.withStatus(LinkStatus.NOT_FOUND).withUrl("");
  }

  void note(Node node, String target) {
    String before = node.getDocument().getChars().subSequence(0, node.getStartOffset()).toString();
    int lineStart = before.lastIndexOf('\n') + 1;
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    int column = 1 + before.codePointCount(lineStart, before.length());
    dangling.add(new Dangling(target, line, column));
  }

  /** The address to print for a written target; absent where it may not or cannot be followed. */
  private Optional<String> address(String target) {
    Matcher scheme = SCHEME.matcher(target);
    if (scheme.matches()) {
      return withScheme(scheme.group(1).toLowerCase(Locale.ROOT), scheme.group(2), target);
    }
    if (target.startsWith("#")) {
      String heading = target.substring(1);
      return Optional.of("#" + prefix + heading).filter(found -> headings.contains(heading));
    }
    Matcher guide = GUIDE_FILE.matcher(target);
    return guide.matches() ? destinations.page("guide", guide.group(1)) : Optional.empty();
  }

  private Optional<String> withScheme(String scheme, String rest, String target) {
    return OUTSIDE.contains(scheme)
        ? WebAddress.wellFormed(target)
        : destinations.page(scheme, rest.strip());
  }
}
