package bellcrank.statics.study.internal;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The bars of a member, split where forces enter, and what acts on the start's side of a cut. A
 * second writing, like {@link DualLaws}.
 */
final class DualBars {

  /** Places nearer than this, in sizes of the device, are one; as the balance takes them. */
  private static final double SAME = 1e-6;

  /** Part of a bar's length within which a cut is at a node. */
  private static final double AT_NODE = 1e-9;

  private final DualDevice at;
  private final Member member;
  private final List<DualAction> acting;
  private final double same;
  private final List<DualVector> nodes = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();

  /** A piece of a bar between two nodes. */
  record Piece(Bar bar, int from, int to) {}

  DualBars(DualDevice at, Member member, List<DualAction> acting) {
    this.at = at;
    this.member = member;
    this.acting = acting;
    same = SAME * at.device.size();
    for (Bar bar : member.bars()) {
      node(at.point(bar.start()));
      node(at.point(bar.end()));
    }
    member.points().forEach(point -> node(at.point(point)));
    for (DualAction action : acting) {
      if (action.entry() instanceof DualEntry.At place) {
        node(place.place());
      } else if (action.entry() instanceof DualEntry.Along along) {
        node(along.from());
        node(along.to());
      }
    }
    member.bars().forEach(this::split);
  }

  private int node(DualVector place) {
    int known = nodeAt(place);
    if (known >= 0) {
      return known;
    }
    nodes.add(place);
    return nodes.size() - 1;
  }

  private int nodeAt(DualVector place) {
    for (int node = 0; node < nodes.size(); node++) {
      if (nodes.get(node).minus(place).norm().value() <= same) {
        return node;
      }
    }
    return -1;
  }

  private void split(Bar bar) {
    List<Integer> on = new ArrayList<>();
    for (int node = 0; node < nodes.size(); node++) {
      if (isOn(nodes.get(node), at.point(bar.start()), at.point(bar.end()))) {
        on.add(node);
      }
    }
    on.sort(Comparator.comparingDouble(node -> way(bar, nodes.get(node)).value()));
    for (int k = 1; k < on.size(); k++) {
      pieces.add(new Piece(bar, on.get(k - 1), on.get(k)));
    }
  }

  private boolean isOn(DualVector place, DualVector from, DualVector to) {
    DualVector way = to.minus(from);
    double length = way.norm().value();
    double along = place.minus(from).dot(way).value() / length;
    double beside = Math.abs(place.minus(from).cross(way).value()) / length;
    return beside <= same && along >= -same && along <= length + same;
  }

  /** Distance of a place from the start of a bar, along it. */
  Dual way(Bar bar, DualVector place) {
    return place.minus(at.point(bar.start())).dot(along(bar));
  }

  DualVector along(Bar bar) {
    return at.point(bar.end()).minus(at.point(bar.start())).unit();
  }

  Dual length(Bar bar) {
    return at.point(bar.end()).minus(at.point(bar.start())).norm();
  }

  List<Piece> pieces(Bar bar) {
    return pieces.stream().filter(piece -> piece.bar().equals(bar)).toList();
  }

  DualVector place(int node) {
    return nodes.get(node);
  }

  /** The piece at a distance from the start of a bar, beside a node if there is one. */
  Piece piece(Bar bar, double distance, Side side) {
    double near = AT_NODE * length(bar).value();
    List<Piece> own = pieces(bar);
    for (Piece piece : own) {
      double end = way(bar, nodes.get(piece.to())).value();
      if (side == Side.BEFORE ? distance <= end + near : distance < end - near) {
        return piece;
      }
    }
    return own.get(own.size() - 1);
  }

  /**
   * What acts on the start's side of a cut, with its moment about the cut.
   *
   * @param piece the piece that is cut
   * @param cut where it is cut
   * @return empty where the piece is part of a ring, or it is not known where something enters
   */
  Optional<DualSum> before(Piece piece, DualVector cut) {
    boolean[] near = reached(piece);
    if (near[piece.to()]) {
      return Optional.empty();
    }
    DualVector force = DualVector.ZERO;
    Dual moment = Dual.ZERO;
    for (DualAction action : acting) {
      Optional<DualSum> own = share(action, piece, near, cut);
      if (own.isEmpty()) {
        return Optional.empty();
      }
      force = force.plus(own.get().force());
      moment = moment.plus(own.get().moment());
    }
    return Optional.of(new DualSum(force, moment));
  }

  private boolean[] reached(Piece without) {
    boolean[] near = new boolean[nodes.size()];
    near[without.from()] = true;
    boolean grown = true;
    while (grown) {
      grown = false;
      for (Piece piece : pieces) {
        boolean one = near[piece.from()] != near[piece.to()];
        if (one && !piece.equals(without)) {
          near[piece.from()] = true;
          near[piece.to()] = true;
          grown = true;
        }
      }
    }
    return near;
  }

  private Optional<DualSum> share(
      DualAction action, Piece cutPiece, boolean[] near, DualVector cut) {
    if (action.entry() instanceof DualEntry.At place) {
      int node = nodeAt(place.place());
      boolean onBars = pieces.stream().anyMatch(one -> one.from() == node || one.to() == node);
      if (!onBars) {
        return Optional.empty();
      }
      DualSum none = new DualSum(DualVector.ZERO, Dual.ZERO);
      return Optional.of(near[node] ? new DualSum(action.force(), action.moment(cut)) : none);
    }
    if (action.entry() instanceof DualEntry.Unplaced) {
      return Optional.empty();
    }
    DualVector force = DualVector.ZERO;
    Dual moment = Dual.ZERO;
    for (Piece piece : pieces) {
      DualVector from = nodes.get(piece.from());
      DualVector to = nodes.get(piece.to());
      boolean cutHere = piece.equals(cutPiece);
      if (cutHere || near[piece.from()]) {
        DualSum part = part(action, from, cutHere ? cut : to, to, cut);
        force = force.plus(part.force());
        moment = moment.plus(part.moment());
      }
    }
    return Optional.of(new DualSum(force, moment));
  }

  /** The part of what is spread that lies on a piece from its start to a place. */
  private DualSum part(
      DualAction action, DualVector from, DualVector until, DualVector to, DualVector about) {
    if (action.entry() instanceof DualEntry.Along along) {
      boolean here = isOn(from, along.from(), along.to()) && isOn(to, along.from(), along.to());
      return here
          ? inOrder(along, shareOf(along, from), shareOf(along, until), about)
          : new DualSum(DualVector.ZERO, Dual.ZERO);
    }
    Dual total = Dual.ZERO;
    for (Bar bar : member.bars()) {
      total = total.plus(length(bar));
    }
    DualVector force = action.force().times(until.minus(from).norm().over(total));
    DualVector middle = from.plus(until).times(0.5);
    return new DualSum(force, middle.minus(about).cross(force));
  }

  private static DualSum inOrder(DualEntry.Along along, Dual one, Dual other, DualVector about) {
    return one.value() <= other.value()
        ? along.part(one, other, about)
        : along.part(other, one, about);
  }

  private static Dual shareOf(DualEntry.Along along, DualVector place) {
    DualVector way = along.to().minus(along.from());
    return place.minus(along.from()).dot(way).over(way.dot(way));
  }
}
