package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.MIX_DM2;
import static freshfurrow.model.timeline.State.WATER_ML;

/**
 * How much one rig should bring: the largest area that is in the ground before the hold time of the oldest batch is over, where
 * the size itself decides when the load comes and how old its batches are.
 */
final class LoadSizer {
    /** The search ends this share of a tank below the true size, never above it. */
    private static final int TOLERANCE_SHARE = 256;

    private static final int MOST_STEPS = 40;

    /** A quarter. */
    private static final int GOOD_PART = 4;

    /** A hundred square metres. */
    static final int CRUMB_DM2 = 10_000;

    private final CompiledSeason season;
    private final State state;
    private final CompostLots lots;
    private final Planting planting;

    private boolean timeLimited;

    private boolean compostLimited;
    private boolean brokenByRest;

    private long smallest;

    /** Sizes whose transfer begins at this time or later do not count, s. */
    private int lastStart;

    LoadSizer(CompiledSeason season, State state, CompostLots lots, Planting planting) {
        this.season = season;
        this.state = state;
        this.lots = lots;
        this.planting = planting;
    }

    /** Whether the last size was held down by age, and not by tank, fields, water or compost. */
    boolean isHeldDownByAge() {
        return timeLimited;
    }

    /** The ceiling, or of one batch what it comes to at the most, dm2. */
    long ceiling(Quote quote, boolean oneBatch) {
        long ceiling = ceiling(quote);
        return oneBatch
                ? Math.min(ceiling, season.recipes.areaOfCompost(season.rigs.batchMg(quote.rig), quote.recipe))
                : ceiling;
    }

    /** The most that tank, rig and the run of fields of the recipe allow, dm2, whatever its age. */
    long ceiling(Quote quote) {
        long bound = rigBound(quote);
        if (quote.source != Quote.Source.AT_WATER) {
            bound = Math.min(bound, tank(quote));
        }
        long run = runDm2(quote, Leeway.most(bound));
        if (run <= Leeway.most(bound)) {
            bound = run;
        }
        if (quote.source == Quote.Source.ON_BOARD) {
            return bound;
        }
        long compostMg = lots.available(NEVER);
        long begunDm2 = begunDm2(quote);
        return CompostLots.isEnough(compostMg, season.recipes.compostMg(bound - begunDm2, quote.recipe))
                ? bound
                : begunDm2 + season.recipes.areaOfCompost(compostMg, quote.recipe);
    }

    private long begunDm2(Quote quote) {
        return quote.source == Quote.Source.BEGUN ? state.v[state.rig(quote.rig) + MIX_DM2] : 0;
    }

    /**
     * Area of one load out of a mix of that area: all that a tank lets in, else a tank, and so much more that the loads to come can
     * be used up to the last of the mix.
     */
    long loadOf(Quote quote, long mixDm2) {
        long tank = tank(quote);
        long most = Leeway.most(tank);
        if (mixDm2 <= most) {
            return mixDm2;
        }
        long loadsToCome = (mixDm2 - 1) / most;
        return Math.max(tank, mixDm2 - loadsToCome * most);
    }

    /**
     * Leaves the quote at the size it returns, dm2; 0 when nothing could be planted in time.
     *
     * @param onlyWorthwhile 0 as well for a load that age holds down so far that it would be gone sooner than its own transfer
     *     takes
     */
    long size(Quote quote, boolean onlyWorthwhile) {
        double capacity = season.planters.capacityDm2PerS(quote.planter);
        long setupDm2 = onlyWorthwhile ? (long) (season.planters.fillSetupS(quote.planter) * capacity) : 0;
        smallest = Math.max(CRUMB_DM2, setupDm2);
        lastStart = NEVER;
        long ceiling = ceiling(quote);
        long size = fitAroundBreaks(quote, ceiling);
        int tomorrow = (quote.need / Calendars.DAY_S + 1) * Calendars.DAY_S;
        if (size > 0 && quote.ask(loadOf(quote, size), size) >= tomorrow) {
            size = todayRather(quote, size, ceiling, tomorrow);
        }
        if (onlyWorthwhile && timeLimited && !worthwhile(quote, loadOf(quote, size))) {
            return 0;
        }
        if (quote.source == Quote.Source.AT_WATER) {
            long tanks = withoutRest(quote, size);
            if (tanks < size && applied(quote, tanks, tanks) >= tanks) {
                size = tanks;
            }
        }
        long whole = fieldsEnd(quote, size);
        if (whole > size
                && whole <= Leeway.most(ceiling)
                && whole - size <= tank(quote) / TOLERANCE_SHARE + CRUMB_DM2
                && size > 0
                && applied(quote, whole, whole) >= whole) {
            size = whole;
        }
        long trimmed = withoutCrumb(quote, size);
        if (trimmed < size && applied(quote, trimmed, trimmed) >= trimmed) {
            size = trimmed;
        }
        if (size > 0) {
            quote.ask(loadOf(quote, size), size);
        }
        return size;
    }

    private long fitAroundBreaks(Quote quote, long ceiling) {
        quote.wholeAfterBreak = false;
        long size = fit(quote, ceiling);
        if (size < ceiling && brokenByRest) {
            quote.wholeAfterBreak = true;
            boolean limitedBefore = timeLimited;
            long after = fit(quote, ceiling);
            if (after > size) {
                return after;
            }
            quote.wholeAfterBreak = false;
            timeLimited = limitedBefore;
        }
        return size;
    }

    /**
     * Where the largest size comes on a later day only: the largest that can come today, if that is worthwhile and a good part of
     * it, so that no planter stands still for a day over the last few litres.
     */
    private long todayRather(Quote quote, long later, long ceiling, int tomorrow) {
        boolean limitedLater = timeLimited;
        boolean wholeLater = quote.wholeAfterBreak;
        lastStart = tomorrow;
        quote.wholeAfterBreak = false;
        long goodPart = Math.max(later / GOOD_PART, smallest);
        long today = applied(quote, goodPart, ceiling) < goodPart ? 0 : fit(quote, ceiling);
        lastStart = NEVER;
        if (today >= goodPart && worthwhile(quote, loadOf(quote, today))) {
            return today;
        }
        timeLimited = limitedLater;
        quote.wholeAfterBreak = wholeLater;
        return later;
    }

    /** Whether planting it takes as long as its own transfer. */
    private boolean worthwhile(Quote quote, long loadDm2) {
        return loadDm2 >= quote.transferS(loadDm2) * season.planters.capacityDm2PerS(quote.planter);
    }

    /**
     * The largest size up to the ceiling of which all is planted in time. What a size would let be planted only shrinks as the size
     * grows, so a size that fits is followed by none larger than what it would let be planted.
     */
    private long fit(Quote quote, long ceiling) {
        timeLimited = false;
        brokenByRest = false;
        compostLimited = false;
        long tooLarge = ceiling;
        long atTooLarge = applied(quote, tooLarge, ceiling);
        if (atTooLarge >= ceiling) {
            return ceiling;
        }
        long fits = smaller(tooLarge, atTooLarge);
        long atFits = 0;
        for (int step = 0; fits > 0; step++) {
            atFits = applied(quote, fits, ceiling);
            if (atFits >= fits) {
                break;
            }
            tooLarge = fits;
            atTooLarge = atFits;
            fits = step < MOST_STEPS ? smaller(tooLarge, atTooLarge) : 0;
        }
        long tolerance = Math.max(1, tank(quote) / TOLERANCE_SHARE);
        long bound = Math.min(tooLarge, atFits);
        for (int step = 1; fits > 0 && bound - fits > tolerance && step < MOST_STEPS; step++) {
            long middle = fits + (bound - fits) / 2;
            if (step % 3 != 0) {
                double excess = atFits - fits;
                double lack = tooLarge - atTooLarge;
                long crossing = fits + (long) ((tooLarge - fits) * excess / (excess + lack)) - tolerance / 4;
                middle = Math.max(fits + 1, Math.min(bound, crossing));
            }
            long atMiddle = applied(quote, middle, ceiling);
            if (atMiddle >= middle) {
                fits = middle;
                atFits = atMiddle;
                bound = Math.min(bound, atFits);
            } else {
                tooLarge = middle;
                atTooLarge = atMiddle;
                bound = Math.min(bound, middle);
            }
        }
        timeLimited = !compostLimited;
        return fits;
    }

    /** The next size to try after one of which only {@code planted} would be in time: half of it when that is nothing. */
    private long smaller(long size, long planted) {
        long smaller = Math.max(planted > 0 ? planted : size / 2, smallest);
        return smaller < size ? smaller : 0;
    }

    /**
     * Area, up to the cap, that would be in the ground in time if the mix were made for {@code mixDm2}; less than that when there
     * is not the compost for it.
     */
    private long applied(Quote quote, long mixDm2, long capDm2) {
        if (mixDm2 <= 0 || quote.ask(loadOf(quote, mixDm2), mixDm2) >= lastStart) {
            return 0;
        }
        if (quote.extraction.batches > 0) {
            brokenByRest |= quote.acrossBreak;
            long available = lots.available(quote.extraction.start);
            if (!CompostLots.isEnough(available, quote.extraction.compostMg)) {
                compostLimited = true;
                return Math.min(mixDm2 - 1, begunDm2(quote) + season.recipes.areaOfCompost(available, quote.recipe));
            }
        }
        planting.begin(quote.planter, quote.transferStart + quote.transferS);
        if (quote.source != Quote.Source.AT_WATER) {
            return planting.walk(quote.planter, quote.recipe, capDm2, quote.deadline);
        }
        return appliedInFills(quote, mixDm2, capDm2);
    }

    /** The same of a mix for several fills; its last may be larger, and more may follow, as if there were more of the mix. */
    private long appliedInFills(Quote quote, long mixDm2, long capDm2) {
        long filled = most(quote, mixDm2, capDm2);
        long done = planting.walk(quote.planter, quote.recipe, filled, quote.deadline);
        int rigFree = quote.transferStart + quote.transferS;
        int rigPlace = quote.place;
        while (done >= filled && done < capDm2) {
            boolean ofMix = done < mixDm2;
            int duration = quote.transferS(loadOf(quote, (ofMix ? mixDm2 : capDm2) - done));
            int ready = quote.arrival(rigPlace, planting.place, rigFree);
            int start = quote.fitTransfer(Math.max(ready, planting.time), duration);
            if (start + duration >= quote.deadline) {
                break;
            }
            planting.time = start + duration;
            rigFree = planting.time;
            rigPlace = planting.place;
            long most = most(quote, ofMix ? mixDm2 - done : 0, capDm2 - done);
            long more = planting.walk(quote.planter, quote.recipe, most, quote.deadline);
            if (more == 0) {
                break;
            }
            done += more;
            filled += most;
        }
        return done;
    }

    /** What is planted at the most after a fill out of what is left of a mix: the last fill might be larger. */
    private long most(Quote quote, long leftOfMixDm2, long leftOfCapDm2) {
        long load = loadOf(quote, leftOfMixDm2);
        return load < leftOfMixDm2 ? load : loadOf(quote, leftOfCapDm2);
    }

    private long tank(Quote quote) {
        return season.planters.tankDm2(quote.planter, quote.recipe);
    }

    private long rigBound(Quote quote) {
        int base = state.rig(quote.rig);
        return switch (quote.source) {
            case ON_BOARD -> state.v[base + MIX_DM2];
            case AT_WATER ->
                Math.min(
                        season.rigs.nurseDm2(quote.rig, quote.recipe),
                        season.recipes.areaOfMix(season.water.largestDailyLimitMl(), quote.recipe));
            case BESIDE_PLANTER, BEGUN -> {
                if (season.water.largestDailyLimitMl() >= season.rigs.nurseMl(quote.rig)) {
                    yield season.rigs.nurseDm2(quote.rig, quote.recipe);
                }
                long water = state.v[base + WATER_ML];
                yield season.recipes.areaOfMix(
                        Math.min(
                                season.rigs.nurseMl(quote.rig),
                                water
                                        + season.recipes.mixMl(begunDm2(quote), quote.recipe)
                                        + season.water.largestDailyLimitMl()),
                        quote.recipe);
            }
        };
    }

    /**
     * A mix for whole tanks only, unless it is the last of a run of fields: where what is then left of the run takes one fill, and
     * where the part of a fill that the rest would not use weighs more than the share of a water trip that the rest saves.
     */
    private long withoutRest(Quote quote, long size) {
        long tank = tank(quote);
        long rest = size % tank;
        long whole = size - rest;
        if (size <= Leeway.most(whole) || whole == 0) {
            return size;
        }
        long run = Math.min(
                runDm2(quote, whole + tank + 1), season.recipes.areaOfCompost(lots.available(NEVER), quote.recipe));
        if (run <= Leeway.most(size)) {
            return size;
        }
        double unusedFill = season.goals.refillMin() * (tank - rest) / tank;
        double shareOfTrip = season.goals.waterTripMin() * rest / size;
        return run <= whole + tank || unusedFill > shareOfTrip ? whole : size;
    }

    /** A size that does not leave so little of a field that it might take a fill of its own for nothing. */
    private long withoutCrumb(Quote quote, long size) {
        long fieldsEnd = fieldsEnd(quote, size);
        boolean leavesCrumb = fieldsEnd > size && fieldsEnd - size < CRUMB_DM2;
        return leavesCrumb && size > 2 * CRUMB_DM2 ? size - CRUMB_DM2 : size;
    }

    private long fieldsEnd(Quote quote, long size) {
        int base = state.planter(quote.planter);
        int i = (int) state.v[base + State.INDEX];
        long fieldsEnd = state.v[base + State.LEFT_DM2];
        while (fieldsEnd < size && ++i < planting.size(quote.planter)) {
            fieldsEnd += season.fields.areaDm2(planting.field(quote.planter, i));
        }
        planting.lookedAt(quote.planter, i);
        return fieldsEnd;
    }

    /** Area of the run of fields of the recipe that the planter has before it, as far as {@code enough}. */
    private long runDm2(Quote quote, long enough) {
        int base = state.planter(quote.planter);
        int i = (int) state.v[base + State.INDEX];
        long run = state.v[base + State.LEFT_DM2];
        int size = planting.size(quote.planter);
        while (run < enough && ++i < size && season.fields.recipe(planting.field(quote.planter, i)) == quote.recipe) {
            run += season.fields.areaDm2(planting.field(quote.planter, i));
        }
        planting.lookedAt(quote.planter, i);
        return run;
    }
}
