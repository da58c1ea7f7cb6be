package freshfurrow.solver.construction;

/**
 * Up one strip of land and down the next, side by side.
 *
 * @param degrees in which direction the strips lie beside one another, from the first axis of the map
 * @param width of a strip, in fields as they lie on the average, above 0
 */
record Strips(double degrees, double width) implements Curve {
    @Override
    public double[] along(FieldMap map) {
        int fields = map.fieldCount();
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        double[] across = new double[fields];
        double[] ahead = new double[fields];
        for (int field = 0; field < fields; field++) {
            across[field] = map.x(field) * cos + map.y(field) * sin;
            ahead[field] = map.y(field) * cos - map.x(field) * sin;
        }
        double[] shareAcross = Curves.shares(across);
        double[] shareAhead = Curves.shares(ahead);
        int strips = Math.max(1, (int) Math.round(Math.sqrt(fields) / width));
        double[] along = new double[fields];
        for (int field = 0; field < fields; field++) {
            int strip = Math.min(strips - 1, (int) (shareAcross[field] * strips));
            along[field] = 2 * strip + (strip % 2 == 0 ? shareAhead[field] : 1 - shareAhead[field]);
        }
        return along;
    }
}
