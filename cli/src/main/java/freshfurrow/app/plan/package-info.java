/** What can be done with a plan that is there: audited, asked, shown by day, made into pages, sheets and tables. Makes no plan. */
@NullMarked
package freshfurrow.app.plan;

import org.jspecify.annotations.NullMarked;
