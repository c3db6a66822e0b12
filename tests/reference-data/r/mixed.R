# Writes mixed models' data and expected values. Needs R 4.2 with Debian's r-cran-lme4 and r-cran-lmertest.
# Run it in this folder: Rscript mixed.R
suppressMessages(library(lmerTest))
options(digits = 17)

write <- function(frame, file) write.csv(frame, file, row.names = FALSE, quote = FALSE)
exact <- function(v) format(v, digits = 17, trim = TRUE, scientific = TRUE)

# A fit whose optimizer is run down to rounding: each minimum is looked for again from where the last search ended.
tight <- function(formula, data, REML) {
  control <- lmerControl(optimizer = "bobyqa", calc.derivs = FALSE, check.conv.singular = "ignore",
                         optCtrl = list(rhoend = 1e-10, maxfun = 1e6))
  fit <- lmer(formula, data, REML = REML, control = control)
  for (i in 1:3) fit <- lmer(formula, data, REML = REML, control = control, start = getME(fit, "theta"))
  fit
}

rows <- list()
record <- function(case, names, formula, data, group, slope = NULL, df = TRUE) {
  for (REML in c(TRUE, FALSE)) {
    fit <- tight(formula, data, REML)
    kind <- if (REML) "restricted" else "full"
    coefficients <- coef(summary(fit))
    put <- function(quantity, value) rows[[length(rows) + 1]] <<- data.frame(
      case = case, criterion = kind, quantity = quantity, value = exact(value))
    for (j in seq_along(names)) {
      put(names[j], coefficients[j, "Estimate"])
      put(paste(names[j], "SE"), coefficients[j, "Std. Error"])
      if (df) put(paste(names[j], "df"), coefficients[j, "df"])
    }
    v <- as.matrix(VarCorr(fit)[[group]])
    put("residual variance", sigma(fit)^2)
    put("intercept variance", v[1, 1])
    if (!is.null(slope)) {
      put("slope variance", v[2, 2])
      put("covariance", v[1, 2])
    }
    put("log-likelihood", as.numeric(logLik(fit)))
    effects <- ranef(fit, condVar = TRUE)[[group]]
    spread <- attr(effects, "postVar")
    for (level in rownames(effects)[c(1, nrow(effects))]) {
      g <- which(rownames(effects) == level)
      put(paste("effect of", level), effects[level, 1])
      put(paste("deviation of", level), sqrt(spread[1, 1, g]))
      if (!is.null(slope)) put(paste("slope of", level), effects[level, 2])
    }
    put("last fitted", fitted(fit)[nrow(data)])
  }
}

data(Dyestuff, Dyestuff2, sleepstudy, package = "lme4")
write(setNames(Dyestuff, c("batch", "yield")), "dyestuff.csv")
write(setNames(Dyestuff2, c("batch", "yield")), "dyestuff2.csv")
sleep <- data.frame(subject = sleepstudy$Subject, days = sleepstudy$Days, reaction = sleepstudy$Reaction)
write(sleep, "sleepstudy.csv")
record("dyestuff", "constant", Yield ~ 1 + (1 | Batch), Dyestuff, "Batch")
record("dyestuff2", "constant", Yield ~ 1 + (1 | Batch), Dyestuff2, "Batch", df = FALSE)
record("sleepstudy", c("constant", "days"), reaction ~ days + (1 | subject), sleep, "subject")
record("sleepstudy slope", c("constant", "days"), reaction ~ days + (days | subject), sleep, "subject", "days")

bromate <- read.csv("../bread/bromate.csv")
record("bromate", c("constant", "level", "level squared"), volume_ml ~ level + I(level^2) + (1 | flour), bromate, "flour")

pastry <- read.csv("../bread/pastry.csv")
record("pastry", c("constant", "x1", "x2", "x3", "x1 squared", "x2 squared", "x3 squared", "x1 x2", "x1 x3", "x2 x3"),
       y ~ x1 + x2 + x3 + I(x1^2) + I(x2^2) + I(x3^2) + x1:x2 + x1:x3 + x2:x3 + (1 | day), pastry, "day")

# Unequal groups, a column that is the same throughout a group, and a slope by group.
set.seed(20240229)
size <- c(2, 9, 3, 5, 1, 7, 4, 6, 3, 2, 8, 5, 4, 10)
kitchen <- rep(sprintf("k%02d", seq_along(size)), size)
altitude <- rep(round(runif(length(size), 0, 1.5), 2), size)
warmth <- round(rnorm(sum(size), 24, 2), 1)
level <- rep(rnorm(length(size), 0, 12), size)
tilt <- rep(rnorm(length(size), 0, 2.5), size)
rise <- round(180 - 9 * (warmth - 24) + 11 * altitude + level + tilt * (warmth - 24) + rnorm(sum(size), 0, 6), 1)
unequal <- data.frame(kitchen, altitude, warmth, rise)
write(unequal, "unequal.csv")
named <- c("constant", "warmth", "altitude")
record("unequal", named, rise ~ warmth + altitude + (1 | kitchen), unequal, "kitchen")
unequal$warm <- unequal$warmth - 24
record("unequal slope", c("constant", "warm", "altitude"), rise ~ warm + altitude + (warm | kitchen), unequal,
       "kitchen", "warm")

# A correlation at its edge: the slopes go with the levels.
set.seed(9)
kitchen <- rep(sprintf("k%d", 1:8), each = 4)
x <- rep(c(-1, 0, 0.5, 2), 8)
own <- rep(rnorm(8, 0, 3), each = 4)
edge <- data.frame(kitchen, x, y = round(10 + x + own + 0.8 * own * x + rnorm(32, 0, 5), 2))
write(edge, "edge.csv")
record("edge", c("constant", "x"), y ~ x + (x | kitchen), edge, "kitchen", "x")

write(do.call(rbind, rows), "mixed-expected.csv")
