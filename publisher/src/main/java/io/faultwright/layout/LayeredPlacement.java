package io.faultwright.layout;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.elk.alg.layered.LayeredLayoutProvider;
import org.eclipse.elk.alg.layered.options.CycleBreakingStrategy;
import org.eclipse.elk.alg.layered.options.LayerConstraint;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.Alignment;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.util.NullElkProgressMonitor;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/** Places a tree in rows with the layered algorithm of ELK; the only class that knows ELK. */
final class LayeredPlacement {
  static {
    // Without this the algorithm cannot copy the default values of its options.
    LayoutMetaDataService.getInstance()
        .registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
  }

  private final Typography type;
  private final Slots measure;

  LayeredPlacement(Typography type) {
    this.type = type;
    this.measure = new Slots(type);
  }

  Placement place(Tree tree) {
    return new Drawing(tree).placement();
  }

  /** Whether the rows alone, however they are placed, are too wide or too high for a room. */
  boolean exceeds(Tree tree, Box room) {
    List<List<Slot>> rows = measure.rows(tree);
    double height = (rows.size() - 1) * rowSpacing();
    for (List<Slot> row : rows) {
      height += row.stream().mapToDouble(Slot::height).max().orElse(0);
    }
    return height > room.height() || rows.stream().anyMatch(row -> width(row) > room.width());
  }

  private double width(List<Slot> row) {
    return row.stream().mapToDouble(Slot::width).sum() + (row.size() - 1) * spacing();
  }

  private double spacing() {
    return type.size() * 1.4;
  }

  private double rowSpacing() {
    return type.size() * 1.6;
  }

  /** One run of the algorithm. */
  private final class Drawing {
    private final List<Slot> slots;
    private final Map<Tree, ElkNode> nodes = new IdentityHashMap<>();
    private final List<ElkEdge> edges = new ArrayList<>();
    private final ElkNode graph = graph();

    Drawing(Tree tree) {
      Map<Tree, Slot> byTree = new IdentityHashMap<>();
      measure.rows(tree).stream()
          .flatMap(List::stream)
          .forEach(slot -> byTree.put(slot.tree(), slot));
      this.slots = tree.nodes().map(byTree::get).toList();
      slots.forEach(slot -> nodes.put(slot.tree(), node(slot)));
      slots.forEach(this::connect);
      nodes
          .get(slots.get(0).tree())
          .setProperty(LayeredOptions.LAYERING_LAYER_CONSTRAINT, LayerConstraint.FIRST);
      new LayeredLayoutProvider().layout(graph, new NullElkProgressMonitor());
    }

    private ElkNode node(Slot slot) {
      ElkNode node = ElkGraphUtil.createNode(graph);
      node.setDimensions(slot.width(), slot.height());
      node.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
      node.setProperty(LayeredOptions.ALIGNMENT, Alignment.TOP);
      port(node, PortSide.NORTH, 0);
      port(node, PortSide.SOUTH, slot.height());
      return node;
    }

    private void port(ElkNode node, PortSide side, double y) {
      ElkPort port = ElkGraphUtil.createPort(node);
      port.setLocation(node.getWidth() / 2, y);
      port.setProperty(LayeredOptions.PORT_SIDE, side);
    }

    private void connect(Slot slot) {
      for (Tree.Limb limb : slot.tree().limbs()) {
        ElkPort out = nodes.get(slot.tree()).getPorts().get(1);
        ElkPort in = nodes.get(limb.tree()).getPorts().get(0);
        edges.add(ElkGraphUtil.createSimpleEdge(out, in));
      }
    }

    Placement placement() {
      return new Placement(
          Grid.up(graph.getWidth()),
          Grid.up(graph.getHeight()),
          slots.stream().map(this::placed).toList(),
          edges.stream().map(this::placed).toList());
    }

    private PlacedNode placed(Slot slot) {
      ElkNode node = nodes.get(slot.tree());
      return slot.node(Grid.half(node.getX()), Grid.half(node.getY()));
    }

    private PlacedEdge placed(ElkEdge edge) {
      Slot from = slot(edge.getSources().get(0));
      Slot to = slot(edge.getTargets().get(0));
      ElkNode target = nodes.get(to.tree());
      double x = Grid.half(target.getX());
      double y = Grid.half(target.getY());
      return new PlacedEdge(
          from.tree().node().id(),
          to.tree().node().id(),
          line(edge.getSections().get(0), to.headroom()),
          to.label(x, y));
    }

    private Slot slot(org.eclipse.elk.graph.ElkConnectableShape port) {
      int index = graph.getChildren().indexOf(((ElkPort) port).getParent());
      return slots.get(index);
    }
  }

  /** The line as routed, and on through the headroom to the figure. */
  private static List<Point> line(ElkEdgeSection section, double headroom) {
    Stream<Point> bends =
        section.getBendPoints().stream().map(bend -> point(bend.getX(), bend.getY()));
    Point start = point(section.getStartX(), section.getStartY());
    Point end = point(section.getEndX(), section.getEndY() + headroom);
    return Stream.of(Stream.of(start), bends, Stream.of(end)).flatMap(points -> points).toList();
  }

  private static Point point(double x, double y) {
    return new Point(Grid.half(x), Grid.half(y));
  }

  private ElkNode graph() {
    ElkNode graph = ElkGraphUtil.createGraph();
    graph.setProperty(LayeredOptions.DIRECTION, Direction.DOWN);
    graph.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
    graph.setProperty(LayeredOptions.CYCLE_BREAKING_STRATEGY, CycleBreakingStrategy.MODEL_ORDER);
    graph.setProperty(
        LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.NODES_AND_EDGES);
    graph.setProperty(
        LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
    graph.setProperty(LayeredOptions.PADDING, new ElkPadding(0));
    graph.setProperty(LayeredOptions.RANDOM_SEED, 1);
    graph.setProperty(LayeredOptions.SPACING_NODE_NODE, spacing());
    graph.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, rowSpacing());
    graph.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, type.size() * 0.8);
    graph.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, type.size() * 0.8);
    graph.setProperty(LayeredOptions.SPACING_EDGE_NODE, type.size());
    return graph;
  }
}
