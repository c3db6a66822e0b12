# Makes forty doughs up and fits their temperature by lm. Needs only R itself (4.2 was used).
# Run it in this folder: Rscript kitchen-dough.R
set.seed(73)
n <- 40
room <- round(rnorm(n, 22, 2.5), 1)
flour <- round(room - 1 + rnorm(n), 1)
water <- round(22 - 0.6 * (room - 22) + rnorm(n, 0, 5), 1)
mix <- sample(5:12, n, replace = TRUE)
dough <- round(24 + 3 + 0.45 * (water - 24) + 0.25 * (flour - 24) + 0.2 * (room - 24) + 0.3 * (mix - 8) + rnorm(n, 0, 0.6), 1)
bakes <- data.frame(bake_id = sprintf("R%02d", 1:n), baked_on = "2026-10-01", water_temp_c = water, flour_temp_c = flour,
                    room_temp_c = room, mix_min = mix, dough_temp_c = dough)
write.csv(bakes, "kitchen-dough.csv", row.names = FALSE, quote = FALSE)
fit <- lm(I(dough - 24) ~ I(water - 24) + I(flour - 24) + I(room - 24) + I(mix - 8))
ends <- confint(fit)
out <- data.frame(cause = c("warming", "water", "flour", "room", "mixing"), estimate = coef(fit), low = ends[, 1], high = ends[, 2])
for (k in 2:4) out[[k]] <- format(out[[k]], digits = 15, trim = TRUE)
write.csv(out, "kitchen-dough-expected.csv", row.names = FALSE, quote = FALSE)
