# What a step of each cause does to the demo journal's typical dough, and how often chance would do it, in base R, apart
# from our own code. Writes demo_findings.csv beside itself.
# Run from the top of the checkout: Rscript tests/reference-data/r/demo_findings.R
bakes <- read.csv("data-demo/millpond-lane/bakes.csv", colClasses = c(baked_on = "character"))
bakes <- bakes[!is.na(as.Date(bakes$baked_on, format = "%Y-%m-%d")), ]
middle <- function(early, late) ifelse(is.na(early), late, (early + late) / 2)
bakes <- data.frame(
  t = bakes$dough_temp_c, h = 100 * bakes$water_g / bakes$flour_g, s = 100 * bakes$salt_g / bakes$flour_g,
  y = 100 * bakes$yeast_g / bakes$flour_g, f = bakes$proof_min, baker = factor(bakes$baker),
  rise = middle(bakes$rise_not_ready_min, bakes$rise_min), proof = bakes$proof_min,
  volume = bakes$loaf_volume_ml / bakes$loaf_g)
options(contrasts = c("contr.sum", "contr.poly"))

rows <- list()

# A step of one variable from the medians of the bakes used: the estimate, its 95 % interval, the p value of the terms
# that hold the variable, and how far the mean of both steps lies from the middle.
answer <- function(name, formula, variable, step, tested, logarithm, bend = FALSE) {
  used <- bakes[complete.cases(bakes[all.vars(formula)]), ]
  fit <- lm(formula, used)
  typical <- as.data.frame(lapply(used[c("t", "h", "s", "y", "f")], median, na.rm = TRUE))
  columns <- function(setting) {
    setting$baker <- levels(used$baker)[1]
    row <- model.matrix(delete.response(terms(fit)), setting, xlev = fit$xlevels)
    row[, grepl("baker", colnames(row))] <- 0
    drop(row)
  }
  up <- down <- typical
  up[[variable]] <- step(typical[[variable]], 1)
  down[[variable]] <- step(typical[[variable]], -1)
  q <- qt(0.975, df.residual(fit))
  ends <- function(weights) {
    estimate <- sum(weights * coef(fit))
    error <- sqrt(drop(weights %*% vcov(fit) %*% weights))
    estimate + c(0, -q, q) * error
  }
  curve <- (columns(up) + columns(down)) / 2 - columns(typical)
  effect <- ends(if (bend) curve else columns(up) - columns(typical))
  level <- exp(sum(columns(typical) * coef(fit)))
  if (logarithm) effect <- level * (exp(effect) - 1)
  bends <- if (logarithm || all(abs(curve) < 1e-9)) rep(NA, 3) else ends(curve)
  p <- anova(lm(update(formula, paste("~ . -", paste(tested, collapse = " - "))), used), fit)[2, "Pr(>F)"]
  rows[[length(rows) + 1]] <<- c(name, nrow(used), format(c(effect, bends, p), digits = 17, scientific = TRUE))
}

more <- function(size) function(x, steps) x + size * steps
times <- function(size) function(x, steps) x * size^steps
rise <- log(rise) ~ t + log(y) + h + s + baker
proof <- log(proof) ~ t + log(y) + h + baker
loaf <- volume ~ h + t + I(h^2) + I(t^2) + I(h * t) + baker
with_proof <- volume ~ h + t + I(h^2) + I(t^2) + I(h * t) + f + I(f^2) + baker
answer("rise_time.dough_temperature", rise, "t", more(2), "t", TRUE)
answer("rise_time.yeast", rise, "y", times(1.25), "log(y)", TRUE)
answer("rise_time.hydration", rise, "h", more(3), "h", TRUE)
answer("rise_time.salt", rise, "s", more(0.5), "s", TRUE)
answer("rise_time.dough_temperature_curve", update(rise, ~ . + I(t^2)), "t", more(2), "I(t^2)", TRUE, bend = TRUE)
answer("proof_time.dough_temperature", proof, "t", more(2), "t", TRUE)
answer("proof_time.yeast", proof, "y", times(1.25), "log(y)", TRUE)
answer("proof_time.hydration", proof, "h", more(3), "h", TRUE)
answer("loaf_volume.hydration", loaf, "h", more(3), c("h", "I(h^2)", "I(h * t)"), FALSE)
answer("loaf_volume.dough_temperature", loaf, "t", more(2), c("t", "I(t^2)", "I(h * t)"), FALSE)
answer("loaf_volume.proof_time", with_proof, "f", more(5), c("f", "I(f^2)"), FALSE)

table <- as.data.frame(do.call(rbind, rows))
names(table) <- c("name", "bakes", "effect", "low", "high", "bend", "bend_low", "bend_high", "p")

# Holm's rule with weights (Holm 1979): temperature, yeast and hydration on rise time and volume count four times.
p <- as.numeric(table$p)
main <- c("rise_time.dough_temperature", "rise_time.yeast", "rise_time.hydration", "loaf_volume.hydration", "loaf_volume.dough_temperature")
weight <- ifelse(table$name %in% main, 4, 1)
by <- order(p / weight)
left <- rev(cumsum(rev(weight[by])))
family <- numeric(length(p))
family[by] <- cummax(pmin(1, left * p[by] / weight[by]))
table$family <- format(family, digits = 17, scientific = TRUE)
write.csv(table, "tests/reference-data/r/demo_findings.csv", row.names = FALSE, quote = FALSE)
