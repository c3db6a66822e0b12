# Writes what the tests of joint regressions compare with. Needs only R itself (4.2 was used).
# Run it in this folder: Rscript joint.R
# Chance of one more response below or above a limit by Student's t, which is exact for one response without priors:
# pt((limit - mean) / (s sqrt(1 + h)), df). Two independent responses: the product.
options(digits = 17)

cars <- read.csv("cars.csv")
fit <- lm(distance ~ speed, cars)
chance <- function(fit, at, limit) {
  p <- predict(fit, at, se.fit = TRUE)
  pt((limit - p$fit) / sqrt(p$se.fit^2 + p$residual.scale^2), p$df)
}
cases <- expand.grid(speed = c(6, 15, 24), limit = c(20, 45, 80))
below <- mapply(function(speed, limit) chance(fit, data.frame(speed = speed), limit), cases$speed, cases$limit)
write.csv(data.frame(cases, below = unname(below)), "joint-expected.csv", row.names = FALSE, quote = FALSE)
