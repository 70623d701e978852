package io.faultwright.prose;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.AttributeProvider;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.html.IndependentAttributeProviderFactory;
import com.vladsch.flexmark.html.IndependentLinkResolverFactory;
import com.vladsch.flexmark.html.LinkResolver;
import com.vladsch.flexmark.html.renderer.AttributablePart;
import com.vladsch.flexmark.html.renderer.LinkResolverBasicContext;
import com.vladsch.flexmark.html.renderer.LinkResolverContext;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.ast.TextCollectingVisitor;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.html.MutableAttributes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * Turns Markdown into markup in which nothing runs: raw HTML is printed as text, and only addresses
 * that {@link Destinations} knows, the web and mail are followed.
 */
public final class Markdown {
  private static final DataHolder OPTIONS =
      new MutableDataSet()
          .set(Parser.EXTENSIONS, List.of(TablesExtension.create()))
          .set(Parser.SPACE_IN_LINK_URLS, true)
          .set(HtmlRenderer.ESCAPE_HTML, true)
          .set(HtmlRenderer.SUPPRESSED_LINKS, "")
          .set(HtmlRenderer.GENERATE_HEADER_ID, false)
          .set(HtmlRenderer.MAX_TRAILING_BLANK_LINES, 0)
          .toImmutable();

  private final Destinations destinations;
  private final int topLevel;

  /**
   * @param destinations where links may lead
   * @param topLevel level that the highest headings of a text become
   */
  public Markdown(Destinations destinations, int topLevel) {
    this.destinations = destinations;
    this.topLevel = topLevel;
  }

  /**
   * Renders a text.
   *
   * @param title a first heading of just these words is left out, since the page prints it
   * @param prefix put before the ids of headings, to keep them apart from others on the page
   */
  public Prose render(String markdown, String title, String prefix) {
    Document document = Parser.builder(OPTIONS).build().parse(PlainText.of(markdown));
    dropTitle(document, title);
    Map<Heading, String> slugs = slugs(document);
    SafeLinks links = new SafeLinks(destinations, Set.copyOf(slugs.values()), prefix);
    slugs.replaceAll((heading, slug) -> prefix + slug);
    String markup = renderer(slugs, links).render(document);
    return new Prose(new Html(markup.strip()), links.dangling());
  }

  private static void dropTitle(Document document, String title) {
    Node first = document.getFirstChild();
    if (first instanceof Heading heading && textOf(heading).equals(title.strip())) {
      heading.unlink();
    }
  }

  private static Map<Heading, String> slugs(Document document) {
    Slugs slugs = new Slugs();
    return StreamSupport.stream(document.getDescendants().spliterator(), false)
        .filter(Heading.class::isInstance)
        .map(Heading.class::cast)
        .collect(
            Collectors.toMap(
                heading -> heading,
                heading -> slugs.next(textOf(heading)),
                (a, b) -> a,
                LinkedHashMap::new));
  }

  private static String textOf(Node node) {
    return new TextCollectingVisitor().collectAndGetText(node).strip();
  }

  private HtmlRenderer renderer(Map<Heading, String> ids, SafeLinks links) {
    int highest = ids.keySet().stream().mapToInt(Heading::getLevel).min().orElse(1);
    int shift = topLevel - highest;
    return HtmlRenderer.builder(OPTIONS)
        .nodeRendererFactory(options -> new ProseNodes(ids, shift, destinations, links))
        .linkResolverFactory(always(links))
        .attributeProviderFactory(marks())
        .build();
  }

  private static IndependentLinkResolverFactory always(SafeLinks links) {
    return new IndependentLinkResolverFactory() {
      @Override
      public LinkResolver apply(LinkResolverBasicContext context) {
        return links;
      }
    };
  }

  private static IndependentAttributeProviderFactory marks() {
    return new IndependentAttributeProviderFactory() {
      @Override
      public AttributeProvider apply(LinkResolverContext context) {
        return Markdown::mark;
      }
    };
  }

  private static void mark(Node node, AttributablePart part, MutableAttributes attributes) {
    if (part == AttributablePart.LINK) {
      markLink(attributes);
    }
    String align = attributes.getValue("align");
    if (!align.isEmpty()) {
      attributes.remove("align");
      attributes.replaceValue("class", "align-" + align);
    }
  }

  /** Takes the address off links that lead nowhere, so that only their text is left. */
  private static void markLink(MutableAttributes attributes) {
    String href = attributes.getValue("href");
    if (href.isEmpty()) {
      attributes.remove("href");
      attributes.remove("title");
    } else if (href.startsWith("http")) {
      attributes.replaceValue("rel", "noopener noreferrer");
    }
  }
}
