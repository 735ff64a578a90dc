import bellcrank.statics.device.Device
import bellcrank.statics.equilibrium.Answer
import bellcrank.statics.equilibrium.Balance
import bellcrank.statics.equilibrium.Outcome
import bellcrank.statics.geometry.Direction
import bellcrank.statics.geometry.Vector

/** A press lever; what the library hands out is never null, and Kotlin knows it. */
fun main() {
  val press: Device =
    Device.named("press lever")
      .point("hinge", 0.0, 0.0)
      .point("ram", 0.25, 0.0)
      .point("grip", 1.5, 0.1)
      .member("lever", "hinge", "ram", "grip")
      .pin("hinge", "hinge", "lever", "ground")
      .force("hand", "lever", "grip", Vector.of(0.0, -200.0))
      .sought("ram", "lever", "ram", Direction.UP)
      .build()
  val balance: Balance = Balance.of(press)
  val name: String = press.name()
  val told =
    when (val outcome: Outcome = balance.outcome()) {
      is Outcome.NoBalance -> outcome.driven().words()
      else -> outcome.words()
    }
  println("$name: $told, ram ${Math.round(balance.number("ram").orElseThrow())} N")
}
