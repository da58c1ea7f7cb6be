package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.BATCHES;
import static freshfurrow.model.timeline.State.CLEAN_DUE;
import static freshfurrow.model.timeline.State.COMPOST_MG;
import static freshfurrow.model.timeline.State.DRIVE_M;
import static freshfurrow.model.timeline.State.DRIVE_S;
import static freshfurrow.model.timeline.State.DUMPED_MG;
import static freshfurrow.model.timeline.State.DUMPED_ML;
import static freshfurrow.model.timeline.State.FREE;
import static freshfurrow.model.timeline.State.MIX_DEADLINE;
import static freshfurrow.model.timeline.State.MIX_DM2;
import static freshfurrow.model.timeline.State.MIX_RECIPE;
import static freshfurrow.model.timeline.State.RIG_PLACE;
import static freshfurrow.model.timeline.State.WATER_ML;
import static freshfurrow.model.timeline.State.WATER_TRIPS;

/** Does for real what a {@link Quote} has worked out: driving, drawing, extracting, transferring, cleaning, dumping. */
final class RigWork {
    private final CompiledSeason season;
    private final State state;
    private final long[] v;
    private final WaterPoints points;
    private final CompostLots lots;

    RigWork(CompiledSeason season, State state, WaterPoints points, CompostLots lots) {
        this.season = season;
        this.state = state;
        this.v = state.v;
        this.points = points;
        this.lots = lots;
    }

    /** All up to the transfer. */
    void bring(Quote quote, long loadDm2, long mixDm2) {
        int rig = quote.rig;
        int base = state.rig(rig);
        boolean newMix = quote.source == Quote.Source.AT_WATER || quote.source == Quote.Source.BESIDE_PLANTER;
        if (newMix && v[base + MIX_DM2] > 0) {
            dump(rig, quote.dumpEnd - dumpS(quote.rig), quote.dumpEnd);
        }
        int t = quote.dumpEnd;
        if (quote.point >= 0) {
            drive(
                    quote,
                    season.water.place(quote.point),
                    quote.arrival((int) v[base + RIG_PLACE], season.water.place(quote.point), t));
            points.book(quote.point, quote.drawStart, quote.drawS, quote.drawMl);
            state.add(WATER_TRIPS, 1);
            t = quote.drawStart + quote.drawS;
            if (state.journal != null) {
                state.journal.drew(rig, quote.point, quote.drawStart, t, quote.drawMl);
            }
        }
        if (quote.source == Quote.Source.AT_WATER) {
            extract(quote, season.water.place(quote.point));
            int driveS = quote.driveS(season.water.place(quote.point), quote.place);
            drive(quote, quote.place, quote.depart + driveS);
            v[base + MIX_DM2] = mixDm2;
            v[base + MIX_RECIPE] = quote.recipe;
            v[base + MIX_DEADLINE] = quote.deadline;
        } else {
            drive(quote, quote.place, quote.arrival((int) v[base + RIG_PLACE], quote.place, t));
            if (quote.source != Quote.Source.ON_BOARD) {
                long begunMl = newMix ? 0 : season.recipes.mixMl(v[base + MIX_DM2], quote.recipe);
                extract(quote, quote.place);
                v[base + WATER_ML] += (quote.point >= 0 ? quote.drawMl : 0)
                        - Math.max(0, season.recipes.mixMl(loadDm2, quote.recipe) - begunMl);
                v[base + WATER_ML] = Math.max(0, v[base + WATER_ML]);
            }
        }
        v[base + MIX_DM2] = Math.max(0, v[base + MIX_DM2] - loadDm2);
    }

    /** The rig is free again: after the clean that the load's last batch still wants. */
    void leave(Quote quote) {
        int base = state.rig(quote.rig);
        int end = quote.transferStart + quote.transferS;
        v[base + FREE] = end;
        int clean = season.rigs.cleanS(quote.rig);
        if ((quote.extraction.batches == 0 && v[base + CLEAN_DUE] == 0) || clean == 0) {
            return;
        }
        v[base + CLEAN_DUE] = 0;
        int start = season.rigs.hours(quote.rig).earliest(end, clean);
        v[base + FREE] = (long) start + clean;
        if (state.journal != null && start < NEVER) {
            state.journal.cleaned(quote.rig, quote.place, start, start + clean);
        }
    }

    /** Lets out what mix is on board when the season is over. */
    void dumpLeftover(int rig) {
        int base = state.rig(rig);
        if (v[base + MIX_DM2] > 0) {
            int free = (int) v[base + FREE];
            int duration = dumpS(rig);
            int start = season.rigs.hours(rig).earliest(free, duration);
            if (start >= NEVER) {
                start = Math.min(free, season.days * Calendars.DAY_S);
                duration = 0;
            }
            dump(rig, start, start + duration);
        }
    }

    private int dumpS(int rig) {
        int base = state.rig(rig);
        return season.rigs.pumpS(rig, season.recipes.mixMl(v[base + MIX_DM2], (int) v[base + MIX_RECIPE]));
    }

    private void dump(int rig, int start, int end) {
        int base = state.rig(rig);
        int recipe = (int) v[base + MIX_RECIPE];
        long ml = season.recipes.mixMl(v[base + MIX_DM2], recipe);
        state.add(DUMPED_ML, ml);
        state.add(DUMPED_MG, season.recipes.compostMg(v[base + MIX_DM2], recipe));
        v[base + MIX_DM2] = 0;
        if (state.journal != null) {
            state.journal.dumped(rig, (int) v[base + RIG_PLACE], start, end, ml);
        }
    }

    private void drive(Quote quote, int to, int arrival) {
        int base = state.rig(quote.rig);
        int from = (int) v[base + RIG_PLACE];
        if (from == to) {
            return;
        }
        int duration = quote.driveS(from, to);
        state.add(DRIVE_S, duration);
        state.add(DRIVE_M, season.places.metres(from, to));
        v[base + RIG_PLACE] = to;
        if (state.journal != null) {
            state.journal.rigMoved(quote.rig, from, to, arrival - duration, arrival);
        }
    }

    private void extract(Quote quote, int place) {
        Extraction extraction = quote.extraction;
        int rig = quote.rig;
        if (extraction.batches == 0) {
            return;
        }
        state.add(BATCHES, extraction.batches);
        state.add(COMPOST_MG, extraction.compostMg);
        lots.take(extraction.compostMg);
        if (state.journal == null) {
            return;
        }
        if (quote.source != Quote.Source.BEGUN) {
            state.journal.newMix(rig);
        }
        int[] starts = new int[extraction.batches];
        extraction.backward(quote.depart, starts);
        Calendar hours = season.rigs.hours(rig);
        if (v[state.rig(rig) + CLEAN_DUE] == 1) {
            int cleanEnd = hours.latest(starts[0], season.rigs.cleanS(rig));
            state.journal.cleaned(rig, place, cleanEnd - season.rigs.cleanS(rig), cleanEnd);
        }
        for (int batch = 1; batch <= extraction.batches; batch++) {
            int start = starts[batch - 1];
            int end = start + extraction.durationOf(batch);
            state.journal.extracted(
                    rig, place, start, end, extraction.compostOf(batch, rig), extraction.waterOf(batch, rig));
            int clean = season.rigs.cleanS(rig);
            if (batch < extraction.batches && clean > 0) {
                int cleanStart = hours.earliest(end, clean);
                state.journal.cleaned(rig, place, cleanStart, cleanStart + clean);
            }
        }
    }
}
