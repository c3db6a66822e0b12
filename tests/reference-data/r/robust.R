# Writes the expected values of the robust fits' tests. Needs R (4.2 was used) with the packages MASS and robustbase.
# Run it in this folder.
options(digits = 17)
suppressMessages({ library(MASS); library(robustbase) })

long <- function(...) {
  values <- unlist(list(...))
  data.frame(quantity = names(values), value = format(values, digits = 16, trim = TRUE, scientific = TRUE))
}

m <- function(fit, prefix) {
  table <- summary(fit, method = "XtX")$coefficients
  c(setNames(table[, 1], paste(prefix, seq_len(nrow(table)))), setNames(table[, 2], paste(prefix, seq_len(nrow(table)), "SE")),
    setNames(fit$s, paste(prefix, "scale")), setNames(fit$w, paste(prefix, "weight", seq_along(fit$w))))
}

# The MM-estimate is robustbase's; its standard errors by the formula that MASS uses for the other fits.
mm <- function(formula, data, prefix) {
  set.seed(1)
  tight <- lmrob.control(refine.tol = 1e-13, rel.tol = 1e-13, scale.tol = 1e-13, solve.tol = 1e-13, k.max = 5000,
                         max.it = 5000, maxit.scale = 5000, nResample = 2000, best.r.s = 20)
  fit <- lmrob(formula, data, control = tight)
  x <- model.matrix(fit)
  n <- nrow(x)
  p <- ncol(x)
  u <- residuals(fit) / fit$scale
  slope <- Mpsi(u, fit$control$tuning.psi, "bisquare", deriv = 1)
  psi <- Mpsi(u, fit$control$tuning.psi, "bisquare")
  correction <- 1 + p * var(slope) / (n * mean(slope)^2)
  variance <- fit$scale^2 * sum(psi^2) / (n - p) * correction^2 / mean(slope)^2
  error <- sqrt(variance * diag(solve(crossprod(x))))
  c(setNames(coef(fit), paste(prefix, seq_len(p))), setNames(error, paste(prefix, seq_len(p), "SE")),
    setNames(fit$scale, paste(prefix, "scale")), setNames(fit$rweights, paste(prefix, "weight", seq_len(n))))
}

fits <- function(formula, data) {
  huber <- rlm(formula, data, acc = 1e-13, maxit = 2000)
  bisquare <- rlm(formula, data, psi = psi.bisquare, init = coef(huber), acc = 1e-13, maxit = 2000)
  long(m(huber, "Huber"), m(bisquare, "bisquare"), mm(formula, data, "MM"))
}

# Loss of ammonia in a plant: Brownlee (1965). The data are in stackloss.csv.
write.csv(fits(stack.loss ~ ., stackloss), "stackloss-robust.csv", row.names = FALSE, quote = FALSE)

# Telephone calls in Belgium, some of them recorded as minutes: Rousseeuw and Leroy (1987), table 2.1.
phones <- data.frame(year = MASS::phones$year, calls = MASS::phones$calls)
write.csv(phones, "phones.csv", row.names = FALSE, quote = FALSE)
write.csv(fits(calls ~ year, phones), "phones-robust.csv", row.names = FALSE, quote = FALSE)
