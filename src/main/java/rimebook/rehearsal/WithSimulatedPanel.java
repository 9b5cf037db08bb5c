package rimebook.rehearsal;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.springframework.context.annotation.Import;

/**
 * Gives a service the simulated panel. Whoever says so has a {@link PanelPlan} and a
 * {@link PanelCast} as beans.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Import({ KnownCodes.class, SharedSeats.class, PlacementPanel.class, PointsPanel.class, SimulatedPanel.class })
public @interface WithSimulatedPanel {

}
