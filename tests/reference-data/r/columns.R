# Writes what R says of columns of a journal and of groups of bakes. Needs R 4.2 with Debian's r-cran-lme4.
# Run it in this folder: Rscript columns.R
suppressMessages(library(lme4))
options(digits = 17)
exact <- function(v) format(v, digits = 17, trim = TRUE, scientific = TRUE)
rows <- list()
put <- function(case, quantity, value) rows[[length(rows) + 1]] <<- data.frame(case = case, quantity = quantity, value = exact(value))

bromate <- read.csv("../bread/bromate-journal.csv")
bromate$level <- factor(bromate$bromate_mg)
levels_fit <- lm(loaf_volume_ml ~ flour_kind + level, bromate)
table <- drop1(levels_fit, test = "F")
put("bromate levels", "F", table["level", "F value"])
put("bromate levels", "p", table["level", "Pr(>F)"])
put("bromate levels", "block F", table["flour_kind", "F value"])
tukey <- TukeyHSD(aov(loaf_volume_ml ~ flour_kind + level, bromate), "level")$level
put("bromate levels", "2 less 0", tukey["2-0", "diff"])
put("bromate levels", "2 less 0 low", tukey["2-0", "lwr"])
put("bromate levels", "2 less 0 high", tukey["2-0", "upr"])
means <- predict(levels_fit, expand.grid(flour_kind = unique(bromate$flour_kind), level = levels(bromate$level)))
half <- qt(0.975, 64) * summary(levels_fit)$sigma / sqrt(17)
for (l in 0:4) {
  put("bromate levels", paste("mean", l), mean(means[(17 * l + 1):(17 * l + 17)]))
  put("bromate levels", paste("low", l), mean(means[(17 * l + 1):(17 * l + 17)]) - half)
}

curve_fit <- lm(loaf_volume_ml ~ flour_kind + bromate_mg + I(bromate_mg^2), bromate)
curve_test <- anova(lm(loaf_volume_ml ~ flour_kind, bromate), curve_fit)
b <- coef(curve_fit)[c("bromate_mg", "I(bromate_mg^2)")]
v <- vcov(curve_fit)[c("bromate_mg", "I(bromate_mg^2)"), c("bromate_mg", "I(bromate_mg^2)")]
put("bromate curve", "linear", b[1]); put("bromate curve", "squared", b[2])
put("bromate curve", "F", curve_test[2, "F"]); put("bromate curve", "p", curve_test[2, "Pr(>F)"])
put("bromate curve", "block F", anova(lm(loaf_volume_ml ~ bromate_mg + I(bromate_mg^2), bromate), curve_fit)[2, "F"])
put("bromate curve", "best", -b[1] / (2 * b[2]))
# Fieller's ends: where (b1 + 2 r b2)^2 = t^2 var(b1 + 2 r b2).
t2 <- qt(0.975, curve_fit$df.residual)^2
ends <- Re(polyroot(c(b[1]^2 - t2 * v[1, 1], 4 * (b[1] * b[2] - t2 * v[1, 2]), 4 * (b[2]^2 - t2 * v[2, 2]))))
put("bromate curve", "best low", min(ends)); put("bromate curve", "best high", max(ends))
top <- -b[1] / (2 * b[2])
# The curve is lowest at the largest dose, 4.
w <- c(top - 4, top^2 - 16)
put("bromate curve", "top less 4", sum(b * w))
put("bromate curve", "top less 4 low", sum(b * w) - sqrt(2 * qf(0.95, 2, curve_fit$df.residual)) * sqrt(w %*% v %*% w))

height <- read.csv("../bread/rise-height-journal.csv")
rise_fit <- aov(dough_height_cm ~ factor(rise_min), height)
put("rise height", "F", summary(rise_fit)[[1]][1, "F value"])
put("rise height", "p", summary(rise_fit)[[1]][1, "Pr(>F)"])
line <- summary(lm(dough_height_cm ~ rise_min, height))$coefficients
put("rise height", "slope", line[2, 1]); put("rise height", "slope p", line[2, 4])

# Benches of a class: minutes of rise by bench, with dough temperatures; made up.
set.seed(7)
bench <- rep(c("ash", "beech", "cherry", "elm", "fir"), c(4, 6, 3, 5, 7))
celsius <- round(rnorm(25, 24, 1.8), 1)
minutes <- round(90 * exp(-0.09 * (celsius - 24) + c(ash = 0.15, beech = -0.1, cherry = 0.02, elm = -0.12, fir = 0.08)[bench] + rnorm(25, 0, 0.08)))
class <- data.frame(bake_id = paste0("C", 1:25), baked_on = "2026-10-01", group = bench, dough_temp_c = celsius, rise_min = minutes)
write.csv(class, "benches.csv", row.names = FALSE, quote = FALSE)
fixed <- lm(log(rise_min) ~ dough_temp_c + group, class)
test <- anova(lm(log(rise_min) ~ dough_temp_c, class), fixed)
put("benches", "F", test[2, "F"]); put("benches", "p", test[2, "Pr(>F)"])
control <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 1e6))
mixed <- lmer(log(rise_min) ~ dough_temp_c + (1 | group), class, REML = TRUE, control = control)
for (name in rownames(ranef(mixed)$group)) put("benches", paste("effect", name), ranef(mixed)$group[name, 1])
put("benches", "spread", attr(VarCorr(mixed)$group, "stddev"))
put("benches", "residual", sigma(mixed))
put("benches", "overall", mean(fixef(mixed)[1] + fixef(mixed)[2] * class$dough_temp_c))
own <- predict(fixed, data.frame(group = "cherry", dough_temp_c = mean(class$dough_temp_c)), interval = "confidence")
put("benches", "own mean cherry", own[1]); put("benches", "own mean cherry low", own[2])

write.csv(do.call(rbind, rows), "columns-expected.csv", row.names = FALSE, quote = FALSE)
