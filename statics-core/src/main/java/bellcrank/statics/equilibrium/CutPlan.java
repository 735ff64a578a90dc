package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.MemberCut;
import bellcrank.statics.equilibrium.internal.Solved;
import java.util.Optional;

/**
 * How a member is cut, found once for a device, to read the forces inside it from many balances:
 * what lies on which side of each cut is not looked for again. Immutable and safe for several
 * threads.
 */
public final class CutPlan {

  private final Device device;
  private final Member member;
  private final MemberCut cut;
  private final Optional<MemberCut> withDryPins;

  private CutPlan(Device device, Member member) {
    this.device = device;
    this.member = member;
    Assembly assembly = Assembly.of(device);
    Assembly dry = Assembly.withDryPins(device);
    cut = MemberCut.of(assembly, member);
    withDryPins =
        dry.columns() == assembly.columns()
            ? Optional.empty()
            : Optional.of(MemberCut.of(dry, member));
  }

  /**
   * The plan of a member.
   *
   * @param device the device
   * @param member name of the member
   * @return how it is cut
   * @throws ModelException if there is no such member
   */
  public static CutPlan of(Device device, String member) {
    return new CutPlan(device, Balance.member(device, member));
  }

  /**
   * The forces inside the member.
   *
   * @param balance a balance of the device, in any pose and case
   * @return what {@link Balance#internalForces} tells of the member
   * @throws ModelException if the balance is of another device
   */
  public InternalForces of(Balance balance) {
    if (!balance.device().equals(device)) {
      throw new ModelException(
          member.name(), "balance", balance.device().name(), "one of the device that is cut");
    }
    Solved solved = balance.solved();
    MemberCut fitting = cut.fits(solved) ? cut : withDryPins.orElse(cut);
    return InternalForces.of(balance, solved, member, fitting);
  }
}
