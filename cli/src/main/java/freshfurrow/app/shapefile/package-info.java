/**
 * Fields out of ESRI shapefiles: polygons (.shp), what is told of them (.dbf), and on which map projection they are drawn (.prj). No
 * well-kept and light library for them is published where this program's other libraries are, and the format is a few pages long. What
 * becomes of the fields is for {@code app/begin} and {@code app/imports}.
 */
@NullMarked
package freshfurrow.app.shapefile;

import org.jspecify.annotations.NullMarked;
