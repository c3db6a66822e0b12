# Writes the data and expected values that the tests compare with. Needs only R itself (4.2 was used).
# Run it in this folder: Rscript make.R
options(digits = 17)

write <- function(frame, file) write.csv(frame, file, row.names = FALSE, quote = FALSE)

long <- function(...) {
  values <- unlist(list(...))
  data.frame(quantity = names(values), value = format(values, digits = 16, trim = TRUE, scientific = TRUE))
}

bands <- function(fit, at, prefix) {
  mean95 <- predict(fit, at, interval = "confidence", level = 0.95)
  new90 <- predict(fit, at, interval = "prediction", level = 0.90)
  out <- c(mean95[, "lwr"], mean95[, "upr"], new90[, "lwr"], new90[, "upr"])
  names(out) <- c(outer(at[[1]], c("mean 95 low", "mean 95 high", "new 90 low", "new 90 high"),
                        function(x, what) paste(prefix, x, what)))
  out
}

# Stopping distance by speed: Ezekiel (1930).
write(data.frame(speed = cars$speed, distance = cars$dist), "cars.csv")
line <- lm(dist ~ speed, cars)
ci <- confint(line, level = 0.99)
write(long(
  setNames(coef(line), c("constant", "speed")),
  setNames(sqrt(diag(vcov(line))), c("constant SE", "speed SE")),
  "covariance" = vcov(line)[1, 2],
  setNames(summary(line)$coefficients[, 4], c("constant p", "speed p")),
  setNames(c(ci), c("constant 99 low", "speed 99 low", "constant 99 high", "speed 99 high")),
  bands(line, data.frame(speed = c(4, 15, 30)), "speed")), "cars-expected.csv")

# Loss of ammonia in a plant: Brownlee (1965).
write(setNames(stackloss, c("air_flow", "water_temperature", "acid", "loss")), "stackloss.csv")
plane <- lm(stack.loss ~ ., stackloss)
flat <- lm(stack.loss ~ Air.Flow, stackloss)
test <- anova(flat, plane)
write(long(
  setNames(coef(plane), c("constant", "air_flow", "water_temperature", "acid")),
  setNames(sqrt(diag(vcov(plane))), paste(c("constant", "air_flow", "water_temperature", "acid"), "SE")),
  setNames(summary(plane)$coefficients[, 4], paste(c("constant", "air_flow", "water_temperature", "acid"), "p")),
  "residual SD" = summary(plane)$sigma,
  "R-squared" = summary(plane)$r.squared,
  setNames(hatvalues(plane), paste("leverage", 1:21)),
  setNames(residuals(plane), paste("residual", 1:21)),
  "F of water_temperature and acid" = test$F[2],
  "p of water_temperature and acid" = test[["Pr(>F)"]][2],
  "extra sum of squares" = test[["Sum of Sq"]][2]), "stackloss-expected.csv")

# Critical values of Student's t, two-sided.
grid <- expand.grid(df = c(1, 2, 3, 9, 30, 1000, 99992), level = c(0.5, 0.9, 0.95, 0.99, 0.9999))
write(data.frame(df = grid$df, level = grid$level,
                 t = format(qt((1 + grid$level) / 2, grid$df), digits = 16, trim = TRUE)), "student.csv")
