# The same work in R: read the journal, fit both regressions with lm.
library(data.table)
setDTthreads(0)
d <- fread(commandArgs(TRUE)[1])
d[, `:=`(t = dough_temp_c - 24, h = 100 * water_g / flour_g - 65, y = log(100 * yeast_g / flour_g),
         s = 100 * salt_g / flour_g, v = loaf_volume_ml / loaf_g)]
rise <- lm(log(rise_min) ~ t + y + h + s, d)
volume <- lm(v ~ h + t + I(h^2) + I(t^2) + h:t, d)
print(coef(summary(rise)))
print(coef(summary(volume)))
