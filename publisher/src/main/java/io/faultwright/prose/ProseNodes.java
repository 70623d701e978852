package io.faultwright.prose;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRenderer;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.ast.TextCollectingVisitor;
import java.util.Map;
import java.util.Set;

/** Prints the nodes that need our own hand: headings, shifted and with ids, and pictures. */
final class ProseNodes implements NodeRenderer {
  private static final int DEEPEST = 6;

  private final Map<Heading, String> ids;
  private final int shift;
  private final Destinations destinations;
  private final SafeLinks links;

  ProseNodes(Map<Heading, String> ids, int shift, Destinations destinations, SafeLinks links) {
    this.ids = ids;
    this.shift = shift;
    this.destinations = destinations;
    this.links = links;
  }

  @Override
  public Set<NodeRenderingHandler<?>> getNodeRenderingHandlers() {
    return Set.of(
        new NodeRenderingHandler<>(Heading.class, this::heading),
        new NodeRenderingHandler<>(Image.class, this::image),
        new NodeRenderingHandler<>(ImageRef.class, this::imageByName));
  }

  private void heading(Heading node, NodeRendererContext context, HtmlWriter html) {
    String tag = "h" + Math.min(DEEPEST, node.getLevel() + shift);
    html.attr("id", ids.get(node)).withAttr().tag(tag);
    context.renderChildren(node);
    html.closeTag(tag).line();
  }

  private void image(Image node, NodeRendererContext context, HtmlWriter html) {
    picture(node, node.getUrl().unescape(), html);
  }

  private void imageByName(ImageRef node, NodeRendererContext context, HtmlWriter html) {
    if (node.isDefined()) {
      picture(node, node.getReferenceNode(context.getDocument()).getUrl().unescape(), html);
    } else {
      html.text(node.getChars().unescape());
    }
  }

  private void picture(Node node, String path, HtmlWriter html) {
    String alt = new TextCollectingVisitor().collectAndGetText(node);
    destinations
        .picture(path)
        .ifPresentOrElse(
            src -> html.attr("src", src).attr("alt", alt).withAttr().tagVoid("img"),
            () -> mereText(node, path, alt, html));
  }

  private void mereText(Node node, String path, String alt, HtmlWriter html) {
    links.note(node, path);
    html.text(alt);
  }
}
