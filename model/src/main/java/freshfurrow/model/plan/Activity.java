package freshfurrow.model.plan;

import java.time.LocalDateTime;

/** Something a planter or a rig does from {@code start} to {@code end}. */
public sealed interface Activity {
    LocalDateTime start();

    LocalDateTime end();

    /** A drive from one place to another; a planter's includes folding and unfolding. */
    record Move(LocalDateTime start, LocalDateTime end, String from, String to, double km) implements Activity {}

    /** A planter stands and cannot go on. */
    record Wait(LocalDateTime start, LocalDateTime end, String at, WaitReason why) implements Activity {}

    /** A planter takes a load. */
    record Fill(LocalDateTime start, LocalDateTime end, String at, String load) implements Activity {}

    /** A planter plants a part of a field out of one load. */
    record Plant(LocalDateTime start, LocalDateTime end, String field, String load, double areaHa)
            implements Activity {}

    /** A rig draws water; treatment time is part of it. */
    record Draw(LocalDateTime start, LocalDateTime end, String at, double litres) implements Activity {}

    /** A rig extracts one batch. */
    record Extract(LocalDateTime start, LocalDateTime end, String at, String batch) implements Activity {}

    /** A rig is cleaned after a batch. */
    record Clean(LocalDateTime start, LocalDateTime end, String at) implements Activity {}

    /** A rig pumps a load into a planter; setup is part of it. */
    record Transfer(LocalDateTime start, LocalDateTime end, String at, String load, double litres)
            implements Activity {}

    /** A rig lets out mix that has aged. */
    record Dump(LocalDateTime start, LocalDateTime end, String at, double litres) implements Activity {}
}
