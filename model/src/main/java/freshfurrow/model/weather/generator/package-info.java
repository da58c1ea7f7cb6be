/**
 * Weather made like a record's, in the form of WGEN (Richardson and Wright, USDA ARS-8, 1984): a climate, how it is fitted to a record and
 * how days are drawn from it. What weather does to the ground does not belong here.
 */
@NullMarked
package freshfurrow.model.weather.generator;

import org.jspecify.annotations.NullMarked;
