package rimebook.web;

import java.util.List;
import java.util.Locale;

import jakarta.servlet.DispatcherType;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.format.FormatterRegistry;
import org.springframework.format.Printer;
import org.springframework.http.CacheControl;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.servlet.LocaleResolver;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.ViewControllerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;

import rimebook.wording.Sentence;

/** What controllers of all modules are given, and the languages the house speaks. */
@Configuration(proxyBeanMethods = false)
class WebConfiguration implements WebMvcConfigurer {

	private final ObjectProvider<FormAnswers> answers;

	private final CrewCookie crew;

	WebConfiguration(ObjectProvider<FormAnswers> answers, CrewCookie crew) {
		this.answers = answers;
		this.crew = crew;
	}

	@Bean
	static BeanPostProcessor formTokens() {
		return FormTokens.beside();
	}

	/** Lets a page say a sentence in its language: <code>${{refusal}}</code>. */
	@Override
	public void addFormatters(FormatterRegistry formatters) {
		formatters.addPrinter(new Spoken());
	}

	@Override
	public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
		resolvers.add(new ActorArgumentResolver());
	}

	@Override
	public void addInterceptors(InterceptorRegistry registry) {
		registry.addInterceptor(new OwnPasswordFirstInterceptor()).addPathPatterns("/desk/**", "/desk");
		registry.addInterceptor(new DoubledFormInterceptor(this.answers)).addPathPatterns("/desk/**", "/manager/**");
		registry.addInterceptor(new RefusedFormInterceptor());
		registry.addInterceptor(new SignedInInterceptor(this.crew)).addPathPatterns("/desk/**");
	}

	/** A browser that shows a PDF or a picture by itself asks there. */
	@Override
	public void addViewControllers(ViewControllerRegistry registry) {
		registry.addViewController("/favicon.ico").setViewName("forward:/img/rimebook.svg");
	}

	/**
	 * A page names its scripts with a fingerprint; the parts that a script imports have
	 * none, so a browser asks each time whether they changed. After an upgrade a tablet
	 * must not run new scripts with old parts.
	 */
	@Override
	public void addResourceHandlers(ResourceHandlerRegistry registry) {
		registry.addResourceHandler("/js/*/**")
			.addResourceLocations("classpath:/static/js/")
			.setCacheControl(CacheControl.noCache());
	}

	@Bean
	FilterRegistrationBean<ResourceUrlEncodingFilter> fileLinks() {
		FilterRegistrationBean<ResourceUrlEncodingFilter> links = new FilterRegistrationBean<>(new FileLinks());
		links.setDispatcherTypes(DispatcherType.REQUEST, DispatcherType.ERROR);
		return links;
	}

	/** English at the desks; managers of teams choose. */
	@Bean
	LocaleResolver localeResolver() {
		return new HouseLanguages();
	}

	private static final class Spoken implements Printer<Sentence> {

		@Override
		public String print(Sentence sentence, Locale language) {
			return sentence.in(language);
		}

	}

}
